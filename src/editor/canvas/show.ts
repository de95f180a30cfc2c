import type { About } from "../../rules/rule.ts";
import type { Editor, Selection } from "../state/store.ts";
import { canvasOf } from "./canvas-store.ts";
import type { Box } from "./hit-model.ts";
import { boxOfAbout } from "./marks-model.ts";
import { boundsOf } from "./view-model.ts";

/** The selection that shows what a finding is about: the first contact stands for the circuit it is on. */
export function selectionAbout(about: readonly About[]): Partial<Selection> {
  const [first] = about;
  if (!first) return {};
  if ("contact" in first) return { parts: new Set([first.part]), contact: first };
  const parts = new Set(about.flatMap((one) => ("part" in one && !("contact" in one) ? [one.part] : [])));
  const wires = new Set(about.flatMap((one) => ("wire" in one ? [one.wire] : [])));
  return { parts, wires };
}

export function selectAbout(editor: Editor, about: readonly About[]): void {
  editor.getState().select(selectionAbout(about));
}

/**
 * Selects what a finding, a search or a table row is about, and brings it into view.
 * Says nothing where none of it is on the drawing any more.
 */
export function showOnCanvas(editor: Editor, about: readonly About[] | About): void {
  const list: readonly About[] = "length" in about ? about : [about];
  const { scene } = editor.getState().derived;
  const boxes = list.map((one) => boxOfAbout(scene, one)).filter((one): one is Box => one !== null);
  const box = boundsOf(boxes);
  if (!box) return;
  selectAbout(editor, list);
  canvasOf(editor).view?.show(box);
}
