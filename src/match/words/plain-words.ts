/** Lower case, no accents, one kind of minus, single blanks: how words of charts are compared. */
export function plainWords(text: string): string {
  return text
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/ß/g, "ss")
    .replace(/ł/g, "l")
    .replace(/ø/g, "o")
    .replace(/æ/g, "ae")
    .replace(/[−–—‐‑]/g, "-")
    .replace(/[_\s]+/g, " ")
    .trim();
}
