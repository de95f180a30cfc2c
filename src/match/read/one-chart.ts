import type { Draft } from "./draft.ts";
import type { ReadGrid } from "./read-grid.ts";

/**
 * A long chart printed in two columns looks like two charts side by side. It is one where its labels go on in one
 * manner and none comes twice; two charts that are to be joined have functions in common, one chart hardly any.
 */
export function isOneChart(left: ReadGrid, right: ReadGrid): boolean {
  const [one, other] = [draftsOf(left), draftsOf(right)];
  const labels = one.flatMap(({ label }) => label ?? []);
  const others = other.flatMap(({ label }) => label ?? []);
  if (labels.length < one.length || others.length < other.length || !labels.length || !others.length)
    return false;
  const taken = new Set(labels);
  if (others.some((label) => taken.has(label))) return false;
  const shapes = new Set([...labels, ...others].map(shapeOf));
  if (shapes.size !== 1) return false;
  const functions = new Set(one.flatMap(functionOf));
  const again = other.flatMap(functionOf);
  const common = again.filter((id) => functions.has(id)).length;
  return common < Math.max(1, Math.min(functions.size, again.length) * 0.5);
}

/** The rows of both as those of one chart, the left ones first. */
export function together(left: ReadGrid, right: ReadGrid): ReadGrid {
  return { ...left, rows: [...left.rows, ...right.rows] };
}

function draftsOf(read: ReadGrid): readonly Draft[] {
  return read.rows.flatMap(({ draft }) => draft ?? []);
}

/** Grounds and spares come many times in any chart. */
function functionOf({ reading, isUnused }: Draft): readonly string[] {
  const first = reading.candidates[0]?.function;
  return isUnused || first === undefined || first === "ground" ? [] : [first];
}

function shapeOf(label: string): string {
  return label.replace(/[a-z]+/gi, "a").replace(/\d+/g, "0");
}
