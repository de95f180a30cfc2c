import { fold, squeeze } from "./fold.ts";

/** How charts say that a cavity is left empty (common practice, no source). Dots and slashes are taken away first. */
const WHOLE = new Set(
  `not used|unused|nc|nu|na|not connected|no connection|not assigned|unassigned|empty|blank|vacant|spare|reserved|open|
none|nil|null|no wire|no function|void|x|xx|xxx|
nicht belegt|unbelegt|nicht benutzt|unbenutzt|nicht verwendet|nicht angeschlossen|frei|leer|nb|reserve|reserviert|
ohne funktion|keine funktion|offen|
non utilise|non utilisee|inutilise|inutilisee|non connecte|non connectee|non affecte|non affectee|libre|vide|non cable|neant|
no usado|no utilizado|sin uso|no conectado|sin conexion|vacio|sin conectar|no asignado|reservado|
non usato|non utilizzato|inutilizzato|libero|vuoto|vuota|libera|non collegato|non connesso|riservato|
niet gebruikt|ongebruikt|niet aangesloten|niet verbonden|vrij|leeg|niet in gebruik|gereserveerd|
nieuzywany|nie uzywany|nieuzywane|niewykorzystany|niepodlaczony|nie podlaczony|niepodlaczone|wolny|wolne|pusty|puste|brak|
rezerwa|zarezerwowany`
    .split(/[|\n]+/)
    .filter(Boolean),
);
const OPENING =
  /^(?:not used|unused|not connected|no connection|not assigned|nicht belegt|unbelegt|nicht benutzt|nicht verwendet|nicht angeschlossen|non utilise|non connecte|no usado|no utilizado|no conectado|non usato|non utilizzato|non collegato|niet gebruikt|niet aangesloten|nieuzywany|niepodlaczony|nie podlaczony)(?!\w)/;

/** True where a wording says that nothing is there: "n.c.", "nicht belegt", "—". An empty wording says nothing. */
export function saysUnused(text: string): boolean {
  const trimmed = squeeze(text);
  if (trimmed === "" || trimmed.length > 80) return false;
  const plain = fold(trimmed);
  if (/^[-_.*/~()[\]\s]+$/.test(plain)) return /[-_./*]/.test(plain);
  const bare = squeeze(plain.replace(/[^\w\s]/g, plain.length <= 6 ? "" : " "));
  return WHOLE.has(bare) || OPENING.test(bare);
}

/** A dash, dots, a cross: unused in a table, and no word of any language. */
export function isStroke(text: string): boolean {
  return /^[-_.*/~\s]+$/.test(fold(text)) && text.trim() !== "";
}
