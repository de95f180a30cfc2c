import { squeeze } from "./fold.ts";
import { type ChartColumn, readHead } from "./heads.ts";
import { looksLikeLabel } from "./label.ts";
import type { Line } from "./lines.ts";
import { type Grid, isRule, type Row } from "./split.ts";
import { coloursOf } from "./words.ts";

type Field = { readonly key: string; readonly role: ChartColumn; readonly value: string };

/**
 * Charts that give each lead as a block of fields, one to a line: "Pin: 1", "Colour: red", "Function: ground", and so
 * on anew. The names of the fields are the heads of the columns.
 * @returns `null` where the text is no such chart
 */
export function records(lines: readonly Line[]): Grid | null {
  const content = lines.filter(({ text }) => !isRule(text));
  if (content.length < 4) return null;
  const named = content.map(({ text }) => fieldOf(text));
  // "Note: seen from behind", once, is a remark.
  const isOnce = (field: Field) =>
    field.role === "text" && named.filter((other) => other?.key === field.key).length === 1;
  const fields = named.map((field) => (field && isOnce(field) ? null : field));
  if (fields.filter(Boolean).length < content.length * 0.7) return null;
  const roles = new Map<string, ChartColumn>();
  for (const field of fields) if (field) roles.set(field.key, roles.get(field.key) ?? field.role);
  const keys = [...roles.keys()];
  for (const key of keys) {
    if (roles.get(key) !== "text" || [...roles.values()].includes("colour")) continue;
    // "Wire: RD/WH": what the word leaves open, the values tell.
    const values = fields.flatMap((field) => (field?.key === key ? [field.value] : []));
    const coloured = coloursOf(values).filter(Boolean).length;
    if (coloured >= values.length * 0.6) roles.set(key, "colour");
  }
  const has = (role: ChartColumn) => [...roles.values()].includes(role);
  if (keys.length < 2 || keys.length > 10 || !(has("function") || (has("label") && has("colour"))))
    return null;
  const rows: Row[] = [];
  let cells: string[] | null = null;
  let source = "";
  let first = 0;
  const close = () => {
    if (cells) rows.push({ line: first, source, cells, isIndented: false });
    cells = null;
  };
  for (const [index, { line, text }] of content.entries()) {
    const field = fields[index];
    if (!field) {
      close();
      // Behind the fields, in a column of its own: titles and remarks are no field.
      rows.push({ line, source: text, cells: [...keys.map(() => ""), squeeze(text)], isIndented: false });
      continue;
    }
    const at = keys.indexOf(field.key);
    if (!cells || at === 0 || cells[at] !== "") {
      close();
      cells = keys.map(() => "");
      first = line;
      source = text;
    } else source += `${"\n".repeat(Math.max(1, line - content[index - 1]!.line))}${text}`;
    cells[at] = field.value;
  }
  close();
  const whole = rows.filter(
    (row) => row.cells.length === keys.length && row.cells.filter(Boolean).length > 1,
  );
  if (whole.length < 2 || whole.length < rows.length * 0.5) return null;
  return { kind: "records", rows, columns: [...keys.map((key) => roles.get(key)!), "text"] };
}

function fieldOf(text: string): Field | null {
  if (text.length > 300) return null;
  const said = /^\s*(?:[-*•]\s+)?(\p{L}[^:=\t]{0,30}?)\s*[:=]\s*(.*)$/u.exec(text);
  const bare = said ? null : /^\s*(?:[-*•]\s+)?(\p{L}[^\d\s]{1,12})\s+(\S{1,6})\s*$/u.exec(text);
  const match = said ?? bare;
  const role = match && readHead(match[1]!);
  if (!match || !role) return null;
  // "Pin 4" opens a block as "Pin: 4" does; "black ground" does not.
  if (bare && (role !== "label" || !looksLikeLabel(match[2]!))) return null;
  return { key: squeeze(match[1]!).toLowerCase(), role, value: squeeze(match[2]!.normalize("NFC")) };
}
