import { dirname, join, normalize } from "node:path/posix";

/** A file of the repository: its path from the root with forward slashes, and what stands in it. */
export type Source = { readonly path: string; readonly text: string };

/** Which folders of `src` a folder may import, itself aside: the table of rooms in DEVELOPERS.md. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  graph: [],
  catalogue: ["graph"],
  electrical: ["graph", "catalogue"],
  match: ["graph", "catalogue"],
  rules: ["graph", "catalogue", "electrical"],
  // Wires are labelled with colour letters and sizes as the catalogue writes them, and a label takes room.
  layout: ["graph", "catalogue"],
  bench: ["graph", "electrical", "rules"],
  sheets: ["graph", "catalogue", "electrical", "match", "rules", "layout"],
  editor: ["graph", "catalogue", "electrical", "match", "rules", "layout", "sheets", "bench"],
  cli: ["graph", "catalogue", "electrical", "match", "rules", "layout", "sheets", "bench", "tasks"],
  tasks: ["graph"],
};

/** These know neither React nor the DOM nor Node. */
const PURE = ["graph", "catalogue", "electrical", "match", "rules", "bench"];
const FORBIDDEN_PACKAGE =
  /^(node:|react($|\/|-)|react-dom|reactflow|@xyflow\/|zustand($|\/react)|@tanstack\/)/;
const FORBIDDEN_GLOBAL = /(?<![.\w$"'`-])(document|window|localStorage|navigator|process)\s*[.[(]/;

/**
 * Every import of a file: static, re-exported, dynamic or only of types.
 * @returns the specifiers in the order of the text
 */
export function importsOf(text: string): string[] {
  const code = withoutComments(text);
  const found: string[] = [];
  const forms =
    /(?:^|[;}\s])(?:import|export)\b[^;"'`(]*?\bfrom\s*["']([^"']+)["']|(?:^|[;}\s])import\s*["']([^"']+)["']|\bimport\s*\(\s*["'`]([^"'`]+)["'`]|\brequire\s*\(\s*["']([^"']+)["']|\bnew\s+URL\s*\(\s*["']([^"']+)["']\s*,\s*import\.meta/g;
  for (const match of code.matchAll(forms)) {
    const specifier = match.slice(1).find((part) => part !== undefined);
    if (specifier !== undefined) found.push(specifier);
  }
  return found;
}

/**
 * What breaks the one-way flow in the given files of `src`.
 * @returns one sentence each; empty when all is well
 */
export function wrongImports(sources: readonly Source[]): string[] {
  const wrong: string[] = [];
  for (const { path, text } of sources) {
    const folder = path.split("/")[1] ?? "";
    const allowed = MAY_IMPORT[folder];
    if (path.split("/").length < 3 || allowed === undefined) {
      wrong.push(`${path} stands in no room of the house; add its folder to the table of rooms first`);
      continue;
    }
    for (const specifier of importsOf(text)) {
      const problem = wrongImport(path, folder, allowed, specifier);
      if (problem !== null) wrong.push(`${path} imports "${specifier}": ${problem}`);
    }
    const used = PURE.includes(folder) ? FORBIDDEN_GLOBAL.exec(withoutStrings(withoutComments(text))) : null;
    if (used) wrong.push(`${path} uses ${used[1]}, but src/${folder} knows neither the DOM nor Node`);
  }
  return wrong;
}

function wrongImport(
  path: string,
  folder: string,
  allowed: readonly string[],
  specifier: string,
): string | null {
  if (!specifier.startsWith(".")) {
    return PURE.includes(folder) && FORBIDDEN_PACKAGE.test(specifier)
      ? `src/${folder} knows neither React nor the DOM nor Node`
      : null;
  }
  const target = normalize(join(dirname(path), specifier.replace(/[?#].*$/, "")));
  if (!target.startsWith("src/")) {
    const data = /^(samples\/|node_modules\/|package\.json$)/.test(target);
    return data && !PURE.includes(folder) ? null : "it lies outside src";
  }
  const room = target.split("/")[1] ?? "";
  if (room !== folder && !allowed.includes(room)) return `src/${folder} may not import src/${room}`;
  return null;
}

/** Blanks comments. A `//` inside a string is left alone: strings are matched first and kept. */
function withoutComments(text: string): string {
  const parts = /"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`|\/\*[\s\S]*?\*\/|\/\/[^\n]*/g;
  return text.replace(parts, (part) => (part.startsWith("/*") || part.startsWith("//") ? " " : part));
}

function withoutStrings(code: string): string {
  return code.replace(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'/g, '""');
}
