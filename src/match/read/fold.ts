const OUTSIDE: Readonly<Record<string, string>> = {
  ł: "l",
  Ł: "l",
  ø: "o",
  Ø: "o",
  ß: "s",
  æ: "a",
  œ: "o",
  "–": "-",
  "—": "-",
  "‐": "-",
  "‑": "-",
  "−": "-",
  "’": "'",
  "“": '"',
  "”": '"',
};

/**
 * Lower case, no accents, one kind of dash and blank, and as long as it was: what is found in it at a place stands
 * at the same place of the text.
 */
export function fold(text: string): string {
  if (/^[ -~]*$/.test(text)) return text.toLowerCase();
  return text.toLowerCase().length === text.length
    ? text.toLowerCase().replace(/[^ -~]/g, foldCharacter)
    : text.replace(/[^ -~]|[A-Z]/g, foldCharacter);
}

function foldCharacter(character: string): string {
  const known = OUTSIDE[character];
  if (known !== undefined) return known;
  if (/\s/.test(character)) return " ";
  const plain = character.normalize("NFD")[0]!.toLowerCase();
  return plain.length === 1 ? plain : character;
}

/** Single blanks, none at the ends. */
export function squeeze(text: string): string {
  if (!/^\s|\s$|\s\s|[^\S ]/.test(text)) return text;
  return text.replace(/\s+/g, " ").trim();
}
