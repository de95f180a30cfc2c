import { apply } from "../../graph/edits/apply.ts";
import { type Edit, group, nameOfEdit, type Refused, refused } from "../../graph/edits/edit.ts";
import type { Harness, PartId, Place } from "../../graph/harness.ts";
import { arrangementEdit, arrangeProblem } from "../../layout/arrangement.ts";
import type { Review } from "../../match/review/review.ts";
import { type Accepted, type JobEnds, toEdit } from "../../match/review/to-edit.ts";
import { canvasOf } from "../canvas/canvas-store.ts";
import { theArranger } from "../canvas/run-arrange.ts";
import type { Editor } from "../state/store.ts";

/**
 * Makes what was decided: parts, wires and where they stand, as one step.
 * @returns the connectors of both sides, or why it cannot be done; then nothing is changed
 */
export async function acceptReview(
  editor: Editor,
  review: Review,
  ends: JobEnds,
): Promise<Accepted | Refused> {
  const harness = editor.getState().history.present;
  const made = toEdit(harness, review, ends);
  if (!made.ok) return made;
  const applied = apply(harness, made.edit);
  if (!applied.ok) return applied;
  let places: readonly Edit[] = [];
  try {
    places = await placesFor(harness, applied.harness);
  } catch {
    // Without an arrangement the parts stand where a drawing puts what has no place; it can be arranged later.
  }
  const now = editor.getState();
  if (now.history.present !== harness) return refused("The harness was edited meanwhile. Accept once more.");
  const inside = made.edit.kind === "group" ? made.edit.edits : [made.edit];
  if (!now.dispatch(group(nameOfEdit(made.edit), [...inside, ...places])))
    return refused("It could not be made.");
  editor.getState().closeStep();
  editor.getState().select({ parts: new Set(Object.values(made.parts)) });
  canvasOf(editor).view?.fit(true);
  return made;
}

/**
 * Where the new parts stand. On a sheet without a wire everything is arranged; else what stands already keeps
 * its place, and the new parts are fitted in around it.
 */
async function placesFor(before: Harness, after: Harness): Promise<readonly Edit[]> {
  const isFresh = Object.keys(before.wires).length === 0;
  const fixed = isFresh ? after : withPins(after, before.layout.places);
  const arranged = await (await theArranger()).arrange(arrangeProblem(fixed));
  const edit = arrangementEdit(fixed, arranged);
  const edits = edit.kind === "group" ? edit.edits : [edit];
  // Wires between parts that did not move keep their ways; what no longer fits is routed anew by itself.
  return isFresh ? edits : edits.map((one) => (one.kind === "lay-out" ? { ...one, paths: {} } : one));
}

function withPins(harness: Harness, old: Harness["layout"]["places"]): Harness {
  const places: Record<PartId, Place> = { ...harness.layout.places };
  for (const id of Object.keys(old) as PartId[]) {
    const place = places[id];
    if (place) places[id] = { ...place, pinned: true };
  }
  return { ...harness, layout: { ...harness.layout, places } };
}
