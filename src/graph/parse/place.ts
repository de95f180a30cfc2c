import { visit } from "jsonc-parser";
import { type Problem, sayPath } from "./problem.ts";
import { linesAndColumns } from "./scan.ts";

/** A problem whose place is still only a path into the data. */
export type Found = Omit<Problem, "where" | "line" | "column"> & { readonly path: readonly PropertyKey[] };

type Step = { readonly below: Map<string, Step>; offset: number | null };

const step = (): Step => ({ below: new Map(), offset: null });

/**
 * Gives each problem its line and column: of the value that its path names, or of the nearest thing around it
 * that the text has. One pass over the text and no tree of it, so the time is that of reading the file once more.
 * @param text valid JSON that is fit to be read (`unfitAt`)
 */
export function placed(found: readonly Found[], text: string): Problem[] {
  const root = step();
  for (const { path } of found) {
    let at = root;
    for (const name of path) {
      const key = String(name);
      let next = at.below.get(key);
      if (!next) {
        next = step();
        at.below.set(key, next);
      }
      at = next;
    }
  }
  findOffsets(root, text);
  const offsets = found.map(({ path }) => offsetOf(root, path));
  const places = linesAndColumns(text, offsets);
  return found.map(({ path, ...rest }, index) => ({ ...rest, where: sayPath(path), ...places[index]! }));
}

function offsetOf(root: Step, path: readonly PropertyKey[]): number {
  let nearest = root.offset ?? 0;
  let at: Step | undefined = root;
  for (const name of path) {
    at = at.below.get(String(name));
    if (at?.offset === undefined || at.offset === null) break;
    nearest = at.offset;
  }
  return nearest;
}

function findOffsets(root: Step, text: string): void {
  /** The step each open bracket stands for (none where no problem is inside), and how many commas it has had. */
  const open: { step: Step | undefined; list: boolean; index: number }[] = [];
  let value: Step | undefined = root;
  const begin = (list: boolean) => (offset: number) => {
    if (value) value.offset ??= offset;
    const inside = value?.below.size ? value : undefined;
    open.push({ step: inside, list, index: 0 });
    value = list ? inside?.below.get("0") : undefined;
    return inside !== undefined;
  };
  const end = () => {
    open.pop();
    value = undefined;
  };
  // Returning false from a begin silences everything inside; its end is still told.
  visit(text, {
    onObjectBegin: begin(false),
    onArrayBegin: begin(true),
    onObjectProperty: (name) => {
      value = open[open.length - 1]?.step?.below.get(name);
    },
    onLiteralValue: (_value, offset) => {
      if (value) value.offset ??= offset;
    },
    onSeparator: (character) => {
      const inner = open[open.length - 1];
      if (character !== "," || !inner) return;
      value = inner.list ? inner.step?.below.get(String(++inner.index)) : undefined;
    },
    onObjectEnd: end,
    onArrayEnd: end,
  });
}
