import { isDirectionCell } from "./direction.ts";
import { ampereCell, bareSize_mm2, findCurrent, findFuse, findSize, sizeCell } from "./figures.ts";
import { type ChartColumn, isDoubtfulLabelHead, isVagueHead, readHead } from "./heads.ts";
import { isLabelSet, labelCell, looksLikeLabel } from "./label.ts";
import { saysUnused } from "./unused.ts";
import { colourSpanOf, coloursOf, functionReading } from "./words.ts";

/** What a column may be, by what stands in it; each 0 to 1. */
type Likeness = {
  readonly filled: number;
  readonly label: number;
  readonly colour: number;
  readonly size: number;
  readonly current: number;
  readonly fuse: number;
  readonly direction: number;
  readonly function: number;
  readonly letters: number;
};

const NOTHING: Likeness = {
  filled: 0,
  label: 0,
  colour: 0,
  size: 0,
  current: 0,
  fuse: 0,
  direction: 0,
  function: 0,
  letters: 0,
};

/** What the columns of rows are by their contents, where heads and persons have said nothing. */
export function guessColumns(
  rows: readonly (readonly string[])[],
  heads: readonly string[] | null,
): readonly ChartColumn[] {
  const count = Math.max(0, ...rows.map((row) => row.length), heads?.length ?? 0);
  const cells = Array.from({ length: count }, (_, index) =>
    rows.map((row) => row[index] ?? "").filter((cell) => cell !== ""),
  );
  const likeness = cells.map(likenessOf);
  const roles: (ChartColumn | null)[] = Array.from({ length: count }, (_, index) => {
    const head = heads?.[index] ?? "";
    if (/^[([]?m?A[)\]]?$/i.test(head)) return "current";
    const role = head === "" ? null : readHead(head);
    if (role === null || isVagueHead(head)) return null;
    return contradicts(role, head, likeness[index]!, cells[index]!) ? null : role;
  });
  settleLabels(roles, heads, likeness);
  const take = (role: ChartColumn, fits: (like: Likeness) => number, least: number) => {
    if (roles.includes(role)) return;
    let best = -1;
    let most = least;
    for (const [index, like] of likeness.entries()) {
      if (roles[index] !== null || like.filled === 0 || fits(like) < most) continue;
      if (best >= 0 && fits(like) === most) continue;
      best = index;
      most = fits(like);
    }
    if (best >= 0) roles[best] = role;
  };
  take("direction", (like) => like.direction, 0.7);
  take("colour", (like) => (like.label > 0.9 && like.colour < 1 ? 0 : like.colour), 0.5);
  const colour = roles.indexOf("colour");
  const next = likeness[colour + 1];
  if (
    colour >= 0 &&
    next &&
    roles[colour + 1] === null &&
    next.colour >= 0.6 &&
    next.function < next.colour &&
    !roles.includes("tracer")
  )
    roles[colour + 1] = "tracer";
  if (!roles.includes("label")) takeHoused(roles, rows, cells);
  if (!roles.includes("label")) {
    // The first that can be: further right stand wire numbers and sizes.
    const first = likeness.findIndex((like, index) => roles[index] === null && like.label >= 0.8);
    if (first >= 0 && (first <= 2 || likeness[first]!.label >= 0.95)) roles[first] = "label";
  }
  if (!roles.includes("label")) takeMarks(roles, rows, cells, likeness);
  take("fuse", (like) => like.fuse, 0.6);
  take("current", (like) => like.current, 0.6);
  take("size", (like) => like.size, 0.6);
  return chooseFunction(roles, rows, likeness);
}

/** "X1 | 1", "X1 | 2", "X2 | 1": neither column names a lead alone, both together do. */
function takeHoused(
  roles: (ChartColumn | null)[],
  rows: readonly (readonly string[])[],
  cells: readonly (readonly string[])[],
): void {
  for (let at = 0; at + 1 < Math.min(roles.length, 4); at++) {
    const [housings, labels] = [cells[at]!, cells[at + 1]!];
    if (roles[at] !== null && roles[at] !== "connector") continue;
    if (roles[at + 1] !== null || housings.length < 4 || labels.length < housings.length) continue;
    const distinct = new Set(housings).size;
    if (distinct < 2 || distinct > housings.length / 2) continue;
    if (!housings.every(looksLikeHousing) || !labels.every(looksLikeLabel)) continue;
    const both = rows.map((row) => `${row[at] ?? ""}-${row[at + 1] ?? ""}`);
    if (!isLabelSet(both)) continue;
    roles[at] = "connector";
    roles[at + 1] = "label";
    return;
  }
}

/** "B+ | Ladeleitung", "INPUT - | starter battery": marks of terminals that are no numbers, each there once. */
function takeMarks(
  roles: (ChartColumn | null)[],
  rows: readonly (readonly string[])[],
  cells: readonly (readonly string[])[],
  likeness: readonly Likeness[],
): void {
  const at = roles.indexOf(null);
  const marks = cells[at];
  if (!marks || at > 1 || marks.length < 3 || marks.length < rows.length * 0.8) return;
  if (new Set(marks.map((mark) => mark.toLowerCase())).size < marks.length) return;
  if (!marks.every((mark) => mark.length <= 9 && /^\S{1,7}(?:\s?[+-]|\s\d{1,2})?$/.test(mark))) return;
  const certain = marks.filter((mark) => functionReading(mark).certain).length;
  if (certain > marks.length * 0.6) return;
  const told = likeness.some(
    (like, index) => index !== at && roles[index] !== "colour" && like.function >= 0.5 && like.letters >= 5,
  );
  if (told && likeness[at]!.colour < 0.5) roles[at] = "label";
  else if (told && roles.includes("colour")) roles[at] = "label";
}

function looksLikeHousing(cell: string): boolean {
  return housingCell(cell) !== cell || /^[a-z]{1,3}-?\d{1,3}$/i.test(cell);
}

/** "connector X1" is X1. */
export function housingCell(cell: string): string {
  return cell.replace(
    /^(?:connector|plug|socket|block|stecker|kupplung|buchse|connecteur|fiche|prise|conector|enchufe|connettore|spina|presa|stekker|zlacze|złącze|wtyczka)\s+(?=\S{1,8}$)/i,
    "",
  );
}

function contradicts(role: ChartColumn, head: string, like: Likeness, cells: readonly string[]): boolean {
  if (like.filled === 0) return false;
  if (role === "label") {
    if (isDoubtfulLabelHead(head)) return like.label < 0.6 && !isLabelSet(cells);
    return like.label < 0.3 && cells.every((cell) => cell.length > 6) && like.function > 0.5;
  }
  if (role === "colour") return like.colour === 0 && like.label > 0.8;
  // Running numbers under "fuse" name the ways of the panel.
  if (role === "fuse") return cells.length >= 3 && cells.every((cell, index) => cell === String(index + 1));
  // "Load" is amperes on one chart and what is fed on another.
  if (role === "current") return like.function >= 0.5 && cells.every((cell) => ampereCell(cell) === null);
  // "Circuit", "signal" over running numbers.
  if (role === "function") return like.letters === 0 && like.function < 0.3;
  return false;
}

/** Two columns of labels: the one named for pins is meant, not the running number. */
function settleLabels(
  roles: (ChartColumn | null)[],
  heads: readonly string[] | null,
  likeness: readonly Likeness[],
): void {
  const found = roles.flatMap((role, index) => (role === "label" ? [index] : []));
  if (found.length < 2) return;
  const worth = (index: number) =>
    (isDoubtfulLabelHead(heads?.[index] ?? "") ? 0 : 2) + likeness[index]!.label;
  const best = found.reduce((one, other) => (worth(other) > worth(one) ? other : one));
  for (const index of found) if (index !== best) roles[index] = "text";
}

/** Which of the columns of words say what a lead is for: one, or several together ("Speaker", "FL", "+"). */
function chooseFunction(
  given: readonly (ChartColumn | null)[],
  rows: readonly (readonly string[])[],
  likeness: readonly Likeness[],
): readonly ChartColumn[] {
  const named = given.flatMap((role, index) => (role === "function" ? [index] : []));
  const free = given.flatMap((role, index) => (role === null && likeness[index]!.filled > 0 ? [index] : []));
  const roles = given.map((role): ChartColumn => role ?? "text");
  // "Goes to" is what a lead is for where nothing else says it.
  const said = given.flatMap((role, index) =>
    role === "text" && likeness[index]!.filled > 0 ? [index] : [],
  );
  const pool = named.length ? named : [...free, ...said].sort((a, b) => a - b);
  const also = named.length ? free : [];
  if (pool.length === 0) return roles;
  const candidates: (readonly number[])[] = pool.map((index) => [index]);
  if (pool.length > 1) candidates.push(pool);
  if (also.length) candidates.push([...pool, ...also].sort((a, b) => a - b));
  for (let at = 0; pool.length > 2 && at + 1 < pool.length; at++) candidates.push([pool[at]!, pool[at + 1]!]);
  let best = candidates[0]!;
  let most = Number.NEGATIVE_INFINITY;
  for (const columns of candidates) {
    // Another column beside those that the heads name has to tell much more.
    const doubt = columns.some((index) => also.includes(index)) ? 1.5 : 0;
    const worth = worthOf(columns, rows, likeness) - doubt;
    if (worth <= most) continue;
    best = columns;
    most = worth;
  }
  return roles.map((role, index) =>
    best.includes(index) ? "function" : role === "function" ? "text" : role,
  );
}

function worthOf(
  columns: readonly number[],
  rows: readonly (readonly string[])[],
  likeness: readonly Likeness[],
): number {
  let worth = 0;
  for (const row of rows) {
    const words = columns
      .map((index) => row[index] ?? "")
      .filter(Boolean)
      .join(" ");
    const reading = functionReading(words);
    worth += reading.certain ? 2 : reading.candidates.length ? 1 : saysUnused(words) ? 1 : 0;
  }
  // Where several do as well, the one with the most words; together only where that tells more.
  const letters = Math.max(...columns.map((index) => likeness[index]!.letters));
  return worth + Math.min(letters, 40) / 200 - (columns.length - 1) * 0.3;
}

function likenessOf(cells: readonly string[]): Likeness {
  if (cells.length === 0) return NOTHING;
  const said = cells.filter((cell) => cell.length < 400 && !saysUnused(cell));
  const share = (fits: (cell: string) => boolean) =>
    said.length ? said.filter(fits).length / said.length : 0;
  const labels = cells.map(labelCell);
  const isLabel = isLabelSet(labels);
  return {
    filled: cells.length,
    label: isLabel ? cells.filter(looksLikeLabel).length / cells.length : 0,
    // A, B, C … in one column are labels, whatever colours the letters are elsewhere.
    colour: isLabel && cells.every((cell) => /^[a-z]$/i.test(labelCell(cell))) ? 0 : colourShare(said),
    size: share(looksLikeSize),
    current: share(
      (cell) => findCurrent(cell) !== null && /^\D*[\d.,]+\s*m?a/i.test(cell) && cell.length < 16,
    ),
    fuse: share((cell) => findFuse(cell) !== null && ampereCell(cell) !== null && cell.length < 24),
    direction: share(isDirectionCell),
    function: share((cell) => functionReading(cell).candidates.length > 0),
    letters: said.join("").replace(/[^\p{L}]/gu, "").length / Math.max(1, said.length),
  };
}

/** The share of cells that are a colour and nothing else, a size aside. */
function colourShare(cells: readonly string[]): number {
  if (cells.length === 0) return 0;
  const bare = cells.map(colourCell);
  const distinct = new Set(bare.map((cell) => cell.toUpperCase()));
  // Left and right are blue and red on some charts, but never those two alone.
  if ([...distinct].every((cell) => /^(?:[LR]|[FR]|[+-]|IN|OUT)$/.test(cell))) return 0;
  if (bare.every((cell) => cell.length > 30)) return 0;
  const colours = coloursOf(bare);
  return bare.filter((cell, index) => colours[index] !== null && isOnlyColour(cell)).length / cells.length;
}

/** Words beside the colour are what the lead is for: "+12V constant (yellow)". */
export function isOnlyColour(cell: string): boolean {
  if (cell === "") return false;
  const span = colourSpanOf(cell);
  return !span || !/[\p{L}\d]/u.test(cell.slice(0, span.start) + cell.slice(span.end));
}

/** A colour cell without the size that some charts write with it, and without the words "wire" or "lead". */
export function colourCell(text: string): string {
  const size = findSize(text) ?? bareSize(text);
  const rest = size ? `${text.slice(0, size.start)} ${text.slice(size.end)}` : text;
  const bare = rest.replace(/^[\s,;:/-]+|[\s,;:/-]+$/g, "");
  const span = bare.length > 3 && bare.length < 60 ? colourSpanOf(bare) : null;
  const around = span ? bare.slice(0, span.start) + bare.slice(span.end) : "";
  return span && /^[\s()[\],;]*(?:wire|lead|cable|ader|draad|kabel|fil)?[\s()[\],;]*$/i.test(around)
    ? bare.slice(span.start, span.end)
    : bare;
}

/** "0.5 RD", "1,5 sw": the size before the colour, its unit left out. */
export function bareSize(
  text: string,
): { readonly start: number; readonly end: number; readonly value: number } | null {
  const match =
    /^\s*#?(\d{1,2}[.,]\d{1,2})(?=[\s,/-]*[a-zß])/i.exec(text) ??
    /^\s*#?([1-9]\d?)(?=[\s,/-]+[a-zß])/i.exec(text) ??
    /(?<=[a-zß][\s,/(-]*)(\d{1,2}[.,]\d{1,2})\)?\s*$/i.exec(text) ??
    /(?<=[a-zß][\s,/(-]+)(\d{1,2})\)?\s*$/i.exec(text);
  const value = match ? bareSize_mm2(match[1]!) : null;
  return match && value !== null ? { start: match.index, end: match.index + match[0].length, value } : null;
}

function looksLikeSize(cell: string): boolean {
  if (findSize(cell)) return cell.length < 16;
  const value = sizeCell(cell, "metric");
  return value !== null && bareSize_mm2(cell.trim()) !== null;
}
