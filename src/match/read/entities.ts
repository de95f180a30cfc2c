const NAMED: Readonly<Record<string, string>> = {
  amp: "&",
  lt: "<",
  gt: ">",
  quot: '"',
  apos: "'",
  nbsp: " ",
  ensp: " ",
  emsp: " ",
  thinsp: " ",
  shy: "",
  ndash: "–",
  mdash: "—",
  minus: "−",
  plus: "+",
  deg: "°",
  ordm: "º",
  sup2: "²",
  szlig: "ß",
  oelig: "œ",
  OElig: "Œ",
  aelig: "æ",
  AElig: "Æ",
  oslash: "ø",
  Oslash: "Ø",
  lstrok: "ł",
  Lstrok: "Ł",
  rarr: "→",
  larr: "←",
  harr: "↔",
  rArr: "⇒",
  frac12: "½",
  frac14: "¼",
  middot: "·",
  bull: "•",
  hellip: "…",
  times: "×",
  micro: "µ",
  ohm: "Ω",
  Omega: "Ω",
  laquo: "«",
  raquo: "»",
  ldquo: "“",
  rdquo: "”",
  lsquo: "‘",
  rsquo: "’",
  sol: "/",
  colon: ":",
  semi: ";",
  comma: ",",
  num: "#",
  vert: "|",
  equals: "=",
};

/** "&Eacute;", "&ccedil;": a letter and the mark that stands at it. */
const MARKS: Readonly<Record<string, string>> = {
  acute: "\u0301",
  grave: "\u0300",
  circ: "\u0302",
  uml: "\u0308",
  tilde: "\u0303",
  cedil: "\u0327",
  ring: "\u030a",
  caron: "\u030c",
  ogon: "\u0328",
  dot: "\u0307",
};
const MARKED = new RegExp(`^([A-Za-z])(${Object.keys(MARKS).join("|")})$`);

/** The text with the characters that a page's source writes as names or numbers; names that nobody knows stay. */
export function decodeEntities(text: string): string {
  if (!text.includes("&")) return text;
  return text.replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|([a-z\d]{2,8}));/gi, (whole, decimal, hex, name) => {
    if (name !== undefined) return named(name) ?? whole;
    const code = decimal !== undefined ? Number(decimal) : Number.parseInt(hex, 16);
    return code > 0 && code <= 0x10ffff && (code < 0xd800 || code > 0xdfff)
      ? String.fromCodePoint(code)
      : whole;
  });
}

function named(name: string): string | null {
  if (Object.hasOwn(NAMED, name)) return NAMED[name]!;
  const marked = MARKED.exec(name);
  return marked ? `${marked[1]}${MARKS[marked[2]!]}`.normalize("NFC") : null;
}

const INLINE =
  /<\/?(?:b|i|u|s|em|strong|span|font|a|sup|sub|small|big|mark|code|tt|kbd|abbr|q|label|pre|br|p|li|td|th|tr|div)(?:\s[^<>]{0,300})?\/?>/gi;

/** A line of plain text in which tags or entities have been left standing, without them. */
export function withoutMarkup(text: string): string {
  const bare = text.includes("<") ? text.replace(INLINE, " ") : text;
  const words = decodeEntities(bare);
  // A line that is nothing but a tag stays as written: no line goes unseen.
  return /\S/.test(words) ? words : text;
}
