export type Element = {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** The text directly in it. */
  text: string;
};

/**
 * Reads the XML that a writer of ours may produce: elements, attributes, text, the five named entities and
 * decimal references. Strict: anything else throws, as a browser's own XML reader would (tests/browser has that one).
 * @returns the elements in the order in which they open
 */
export function readXml(file: string): Element[] {
  // The characters that XML 1.0 (W3C, 5th edition, production 2) allows.
  if (!/^[\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]*$/u.test(file)) {
    throw new Error("a character that XML does not allow");
  }
  const body = file.replace(/^<\?xml version="1\.0" encoding="UTF-8"\?>\n/, "");
  const elements: Element[] = [];
  const open: Element[] = [];
  const token = /<\/([a-z]+)>|<([a-z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/giy;
  while (token.lastIndex < body.length) {
    const at = token.lastIndex;
    const match = token.exec(body);
    if (!match) throw new Error(`not well-formed at "${body.slice(at, at + 40)}"`);
    const [, closed, name, attributes = "", empty, text] = match;
    if (closed !== undefined) {
      if (open.pop()?.name !== closed) throw new Error(`</${closed}> closes nothing`);
    } else if (name !== undefined) {
      const element: Element = { name, attributes: readAttributes(attributes), text: "" };
      elements.push(element);
      if (empty === "") open.push(element);
    } else if (text !== undefined) {
      const inside = open.at(-1);
      if (inside) inside.text += entitiesRead(text);
      else if (text.trim() !== "") throw new Error(`text outside the root: "${text}"`);
    }
  }
  if (open.length > 0) throw new Error(`<${open.at(-1)?.name}> is not closed`);
  return elements;
}

function readAttributes(text: string): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [, name = "", value = ""] of text.matchAll(/([\w:-]+)="([^"]*)"/g)) {
    if (name in found) throw new Error(`attribute ${name} stands twice`);
    found[name] = entitiesRead(value);
  }
  return found;
}

function entitiesRead(text: string): string {
  return text.replace(/&([^;\s]*;?)/g, (whole, entity: string) => {
    const named = { "amp;": "&", "lt;": "<", "gt;": ">", "quot;": '"', "apos;": "'" }[entity];
    const code = /^#(\d+);$/.exec(entity)?.[1];
    if (named !== undefined) return named;
    if (code !== undefined) return String.fromCodePoint(Number(code));
    throw new Error(`not an entity: ${whole}`);
  });
}
