/** A cell is text, or a number with its decimals already chosen by whoever knows its unit. */
export type Row = readonly string[];

/**
 * Rows under a head as lines with aligned columns, two spaces in front and between. Columns whose cells are all numbers,
 * or a dash, stand to the right.
 */
export function inColumns(head: Row, rows: readonly Row[]): readonly string[] {
  const widths = head.map((name, column) =>
    Math.max(width(name), ...rows.map((row) => width(row[column] ?? ""))),
  );
  const right = head.map(
    (_, column) =>
      rows.length > 0 && rows.every((row) => /^[-−+]?[\d.,]+( ?%)?$|^[–-]?$/.test(row[column] ?? "")),
  );
  return [head, ...rows].map((row) =>
    `  ${row.map((cell, column) => padded(cell, widths[column]!, right[column]!)).join("  ")}`.trimEnd(),
  );
}

function padded(cell: string, to: number, toRight: boolean): string {
  const fill = " ".repeat(Math.max(0, to - width(cell)));
  return toRight ? fill + cell : cell + fill;
}

/** Characters as a terminal shows them; marks that stand on another take no place. */
function width(text: string): number {
  return [...text.replace(/\p{Mn}/gu, "")].length;
}

/** A number for a machine: nine digits, and nothing where only rounding is left. */
export function rounded(value: number): number {
  return Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(9));
}

/** Entries by a name that people give, which two may share: the second one has its id behind it. */
export function byName<T>(
  entries: Iterable<readonly [name: string, id: string, value: T]>,
): Record<string, T> {
  const found = new Map<string, T>();
  for (const [name, id, value] of entries) found.set(found.has(name) ? `${name} (${id})` : name, value);
  return Object.fromEntries(found);
}
