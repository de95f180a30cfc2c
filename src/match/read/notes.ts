import { fold, squeeze } from "./fold.ts";

const OPENING =
  /^(?:\*+|†|note\b|notes\b|n\.?b\.?:|remark|see\b|caution|warning|important|attention|source|hinweis|achtung|anmerkung|bemerkung|quelle|siehe|remarque|nota\b|notas?:|voir\b|observ|attenzione|avvertenza|fonte|opmerking|let op|zie\b|uwaga|zrodlo|copyright|©|www\.|https?:|all\b|alle\b|the\b|if\b|when\b|do not\b|for\b)/;

/** A sentence or a remark, and no row: it says so, or it is as long and ends as sentences do. */
export function isProse(text: string): boolean {
  if (text.length > 600) return true;
  const plain = squeeze(fold(text));
  if (plain.length > 300) return true;
  const words = plain.split(" ");
  if (OPENING.test(plain) && words.length >= 3 && !/^\*+\s?\w{1,4}\b/.test(plain)) return true;
  if (words.length >= 7 && /[a-z]{2}[.!?]$/.test(plain)) return true;
  return words.length > 16 && !/\t|\s{3,}/.test(text.trim());
}

/** "Page 3", "Seite 2/4", "- 3 -". */
export function isPageNumber(text: string): boolean {
  if (text.length > 80) return false;
  const plain = squeeze(fold(text));
  return (
    /^(?:page|p\.|seite|s\.|pagina|pag\.|strona|str\.|sheet|blatt|feuille|hoja|foglio|blad)\s*\d{1,3}(?:\s*(?:\/|of|von|de|di|van|z|sur)\s*\d{1,3})?$/.test(
      plain,
    ) ||
    /^-\s?\d{1,3}\s?-$/.test(plain) ||
    // A title with the number of its page behind it.
    /(?:page|seite|pagina|strona|sheet|blatt|feuille|hoja|foglio|blad)\s*\d{1,3}\s*(?:\/|of|von|de|sur|di|van|z)\s*\d{1,3}$/.test(
      plain,
    )
  );
}

const HOUSING = new RegExp(
  `(?<!\\w)(?:${[
    "connector|plug|socket|harness|loom|pinout|breakout|terminals|terminal block|outputs|inputs",
    "stecker|steckverbinder|steckdose|kupplung|pinbelegung|kabelbaum|leitungssatz|klemmleiste",
    "connecteur|fiche|prise|faisceau|bornier|conector|enchufe|mazo|connettore|spina|presa|cablaggio",
    "stekker|kabelboom|zlacze|wtyczka|gniazdo|wiazka|section|table|tabelle|tableau|tabla|tabella|tabel|gruppe",
  ].join("|")})(?!\\w)`,
);

/** A line over rows, such as "Connector B (brown)", "Speakers:", "# Power". */
export function isHeading(text: string): boolean {
  if (text.length > 200) return false;
  const plain = squeeze(fold(text));
  if (/^#{1,6}\s+\S/.test(plain) || /^[=*_-]{2,}\s*\S.*\S\s*[=*_-]{2,}$/.test(plain)) return true;
  if (/^[^:=\t]{2,40}:$/.test(plain)) return true;
  return HOUSING.test(plain) && plain.split(" ").length <= 9 && !/[:=|\t]\s*\S|\S {3,}\S/.test(text.trim());
}

/** A title without the marks that made it one. */
export function bareTitle(text: string): string {
  return squeeze(text)
    .replace(/^[#=*_\s-]+\s*(?=\S)|\s*[#=*_]+$|:$/g, "")
    .trim();
}
