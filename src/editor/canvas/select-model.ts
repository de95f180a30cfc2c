import type { Harness } from "../../graph/harness.ts";
import type { Selection } from "../state/store.ts";
import type { Hit } from "./hit-model.ts";

/**
 * The selection after a click.
 * @param add Shift is held: what was clicked joins the selection, or leaves it
 */
export function clicked(selection: Selection, hit: Hit, add: boolean): Selection {
  const parts = new Set(add ? selection.parts : []);
  const wires = new Set(add ? selection.wires : []);
  const toggle = <T>(set: Set<T>, item: T) => {
    if (add && set.has(item)) set.delete(item);
    else set.add(item);
  };
  switch (hit.kind) {
    case "contact":
      toggle(parts, hit.ref.part);
      return { parts, wires, contact: add ? null : hit.ref };
    case "part":
      toggle(parts, hit.part);
      return { parts, wires, contact: null };
    case "wire":
    case "loose":
      toggle(wires, hit.wire);
      return { parts, wires, contact: null };
    case "nothing":
      return add ? selection : { parts, wires, contact: null };
  }
}

/** Everything. */
export function wholeSelection(harness: Pick<Harness, "parts" | "wires">): Selection {
  return {
    parts: new Set(Object.values(harness.parts).map((part) => part.id)),
    wires: new Set(Object.values(harness.wires).map((wire) => wire.id)),
    contact: null,
  };
}
