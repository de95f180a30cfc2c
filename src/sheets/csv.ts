import { printable } from "../layout/text/printable.ts";
import type { Table, TableSource } from "./tables/table.ts";
import { wireTable } from "./tables/wire-table.ts";

/**
 * A table as comma-separated values.
 * @returns CRLF line ends and quoting as RFC 4180 has them; a byte order mark first, so that a spreadsheet reads
 *   µ and Ω right; a cell that a spreadsheet would take for a formula gets an apostrophe in front
 * @source RFC 4180, section 2
 */
export function writeCsv(table: Table): string {
  const lines = [
    table.columns.map((column) => column.id),
    ...table.rows.map((row) => row.map(({ text }) => text)),
  ];
  return `\ufeff${lines.map((line) => line.map(field).join(",")).join("\r\n")}\r\n`;
}

/** The wire table as comma-separated values. */
export function wiresCsv(source: TableSource): string {
  return writeCsv(wireTable(source));
}

function field(text: string): string {
  const safe = defused(printable(text));
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A number may begin with a sign; anything else that begins like a formula is made plain text. */
function defused(text: string): string {
  if (!/^\s*[=+\-@|%]/.test(text) || /^[+-]\d+(\.\d+)?$/.test(text)) return text;
  return `'${text}`;
}
