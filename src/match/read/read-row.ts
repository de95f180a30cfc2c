import type { Direction } from "../../graph/harness.ts";
import type { FunctionReading } from "../chart.ts";
import { bareSize, colourCell, housingCell } from "./columns.ts";
import { findDirection } from "./direction.ts";
import type { Draft } from "./draft.ts";
import { ampereCell, findSize, sizeCell } from "./figures.ts";
import type { ChartColumn } from "./heads.ts";
import { type Labeller, labelCell, looksLikeLabel } from "./label.ts";
import { mine, type Place } from "./mine.ts";
import type { Row } from "./split.ts";
import { isStroke, saysUnused } from "./unused.ts";
import { functionReading } from "./words.ts";

/** How the rows of one chart are to be read. */
export type Manner = {
  readonly columns: readonly ChartColumn[];
  /** For a column of words: how to find the labels that stand in it. */
  readonly labellers: readonly (Labeller | null)[];
  readonly sizes: "metric" | "awg";
  /** For a column of words: where in it the letters of the colour stand. */
  readonly places: readonly (Place | null)[];
};

const UNUSED: FunctionReading = { candidates: [{ function: "not-used", share: 1 }], certain: true };

/** Reads one row by what its columns hold. */
export function readRow(row: Row, manner: Manner): Draft {
  const { columns, labellers } = manner;
  const hasColour = columns.includes("colour");
  const filled = row.cells.filter(Boolean).length;
  let label: string | null = null;
  let connector = "";
  let colourText = "";
  let tracerText = "";
  let area_mm2: number | null = null;
  let current_A: number | null = null;
  let fuse_A: number | null = null;
  let directionCell = "";
  let direction: Direction = "unknown";
  const words: string[] = [];
  const beside: string[] = [];
  const kept: string[] = [];
  for (const [index, cell] of row.cells.entries()) {
    if (cell === "") continue;
    const role = columns[index] ?? "text";
    if (role === "label" && label === null) {
      if (
        looksLikeLabel(cell) ||
        (filled > 1 && cell.length <= 14 && (/^\S+$/.test(cell) || /^\S+ (?:\d+\S*|[+\-−–])$/.test(cell)))
      )
        label = labelCell(cell);
      else words.push(cell);
    } else if (role === "connector" && connector === "") {
      connector = housingCell(cell);
      kept.push(cell);
    } else if (role === "colour" && colourText === "") {
      const size = findSize(cell) ?? bareSize(cell);
      if (size) area_mm2 ??= size.value;
      if (saysUnused(cell) && !isStroke(cell)) words.push(cell);
      else if (!isStroke(cell)) colourText = colourCell(cell);
    } else if (role === "tracer" && tracerText === "") {
      if (!isStroke(cell)) tracerText = colourCell(cell);
    } else if (role === "size") {
      const size = sizeCell(cell, manner.sizes);
      if (size !== null) area_mm2 ??= size;
      else if (!isStroke(cell)) kept.push(cell);
    } else if (role === "current" || role === "fuse") {
      const value = ampereCell(cell);
      if (value === null) {
        if (!isStroke(cell)) kept.push(cell);
      } else if (role === "current") current_A ??= value;
      else fuse_A ??= value;
    } else if (role === "direction" && directionCell === "") directionCell = cell;
    else {
      const mined = mine(
        cell,
        label === null ? (labellers[index] ?? null) : null,
        !hasColour && colourText === "",
        manner.places[index] ?? null,
      );
      label ??= mined.label;
      if (mined.colourText) colourText = mined.colourText;
      area_mm2 ??= mined.area_mm2;
      current_A ??= mined.current_A;
      fuse_A ??= mined.fuse_A;
      if (direction === "unknown") direction = mined.direction;
      if (mined.text === "") continue;
      if (role === "function") words.push(mined.text);
      else {
        beside.push(mined.text);
        kept.push(mined.text);
      }
    }
  }
  const text = words.join(" ");
  const isEmpty = text === "" || isStroke(text);
  const saysSo = saysUnused(text) || (isEmpty && beside.length > 0 && beside.every(saysUnused));
  const isUnused = label !== null && (saysSo || (isEmpty && colourText === "" && beside.length === 0));
  if (direction === "unknown") direction = findDirection(text);
  return {
    line: row.line,
    source: row.source,
    label,
    connector,
    colourText,
    tracerText,
    area_mm2,
    current_A,
    fuse_A,
    directionCell,
    direction,
    text,
    reading: isUnused ? UNUSED : readWords(text, beside),
    isUnused,
    kept,
  };
}

/** What the words are for; where they leave it open, what stands beside them may decide between their candidates. */
function readWords(text: string, beside: readonly string[]): FunctionReading {
  const own = functionReading(text);
  if (own.certain || beside.length === 0) return own;
  const whole = functionReading([text, ...beside].filter(Boolean).join(" "));
  const [first] = whole.candidates;
  const agrees =
    own.candidates.length === 0 || own.candidates.some((item) => item.function === first?.function);
  return whole.certain && agrees ? whole : own;
}
