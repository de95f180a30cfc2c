/** Text as it is compared when searching: lower case, no accents. Most of it is plain letters, which is quick. */
export function fold(text: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the range is ASCII, all of it
  if (/^[\x00-\x7f]*$/.test(text)) return text.toLowerCase();
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
}
