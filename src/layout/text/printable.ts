/**
 * Controls, marks that hide text or turn its direction, separators, half surrogate pairs, and the two codes
 * that XML has no way to write.
 */
const CONTROL = /[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\ufffe\uffff]/gu;
const BREAK = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;

/**
 * Text as one line that can be drawn: accents composed, line breaks and tabs as one space, controls and half
 * surrogate pairs taken out. Every writer draws this and every measure measures it, so that screen, paper and
 * file show the same.
 */
export function printable(text: string): string {
  if (isPlain(text)) return text;
  return text.replace(BREAK, " ").replace(CONTROL, "").normalize("NFC");
}

/** Nearly all text is plain: letters of the first pages without anything to compose or remove. */
function isPlain(text: string): boolean {
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    if (code < 0x20 || (code > 0x7e && code < 0xa0) || code === 0xad || code > 0x2ff) return false;
  }
  return true;
}
