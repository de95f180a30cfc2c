import { apply } from "../../graph/edits/apply.ts";
import type { Harness } from "../../graph/harness.ts";
import { trace } from "../../graph/trace.ts";
import type { Arranger } from "../../layout/arrange/client.ts";
import { arrangementEdit, arrangeProblem } from "../../layout/arrangement.ts";
import type { Drawing } from "../../layout/drawing.ts";
import { makeScene } from "../../layout/scene.ts";
import { drawDiagram } from "../../sheets/diagram.ts";

let arranger: Promise<Arranger> | null = null;
let last: Promise<unknown> = Promise.resolve();
const drawn = new WeakMap<Harness, Promise<Drawing>>();

/**
 * An example, arranged and drawn as the editor and the papers draw. One after the other: an engine of its own does
 * it, so that the drawing behind the book is not held up.
 */
export function drawExample(harness: Harness): Promise<Drawing> {
  const known = drawn.get(harness);
  if (known) return known;
  const made = last.then(() => arrangeAndDraw(harness));
  last = made.catch(() => undefined);
  drawn.set(harness, made);
  return made;
}

async function arrangeAndDraw(harness: Harness): Promise<Drawing> {
  arranger ??= import("../../layout/arrange/client.ts").then(({ createArranger }) => createArranger());
  const arranged = await (await arranger).arrange(arrangeProblem(harness));
  const result = apply(harness, arrangementEdit(harness, arranged));
  const placed = result.ok ? result.harness : harness;
  return drawDiagram(makeScene(placed, trace(placed)), placed);
}
