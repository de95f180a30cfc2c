import { copyFragment, type Fragment, insertFragment, readFragment } from "../../graph/edits/copy.ts";
import { snap } from "../../layout/geometry/shape.ts";
import { offerRows } from "../housing/offer-rows.ts";
import type { Editor } from "../state/store.ts";
import { canvasOf } from "./canvas-store.ts";
import { clearDrop } from "./room-model.ts";

/** What was copied last, for a browser that keeps its clipboard from pages. */
let remembered = "";

/** Copies what is selected: to the system's clipboard as text, so that another tab or another day can paste it. */
export async function copySelection(editor: Editor): Promise<boolean> {
  const { selection, history, say } = editor.getState();
  const fragment = copyFragment(history.present, selection.parts, selection.wires);
  const count = fragment.parts.length + fragment.wires.length;
  if (count === 0) return false;
  remembered = JSON.stringify(fragment);
  try {
    await navigator.clipboard.writeText(remembered);
  } catch {
    // Not allowed here: pasting within this page still works from what is remembered.
  }
  say(`Copied ${count} ${count === 1 ? "thing" : "things"}.`);
  return true;
}

/** Pastes what the system's clipboard holds, or what was copied on this page last. */
export async function pasteFromClipboard(editor: Editor): Promise<void> {
  let text = remembered;
  try {
    text = (await navigator.clipboard.readText()) || remembered;
  } catch {
    // Not allowed here.
  }
  await pasteText(editor, text);
}

/** @returns whether the text was a piece of a harness, or rows for the connector that is selected */
export async function pasteText(editor: Editor, text: string): Promise<boolean> {
  const { say } = editor.getState();
  const fragment = await readFragment(text);
  if (!fragment) {
    if (offerRows(editor, text)) return true;
    say(
      "The clipboard holds no part of a harness. To paste rows, select the connector they belong to.",
      "refused",
    );
    return false;
  }
  const centre = canvasOf(editor).view?.centre() ?? { x: 0, y: 0 };
  const middle = middleOf(fragment);
  insert(editor, fragment, snap(centre.x - middle.x), snap(centre.y - middle.y));
  return true;
}

/** A second one of what is selected, under it where there is room. */
export function duplicateSelection(editor: Editor): void {
  const { selection, history } = editor.getState();
  insert(editor, copyFragment(history.present, selection.parts, selection.wires), 0, 0);
}

function insert(editor: Editor, fragment: Fragment, dx: number, dy: number): void {
  const { history, derived, dispatch, select, say } = editor.getState();
  const result = insertFragment(
    history.present,
    fragment,
    dx,
    dy + clearDrop(derived.scene, fragment, dx, dy),
  );
  if ("ok" in result) say(result.why, "refused");
  else if (dispatch(result.edit)) select({ parts: new Set(result.parts), wires: new Set(result.wires) });
}

function middleOf(fragment: Fragment): { x: number; y: number } {
  const places = Object.values(fragment.places);
  if (places.length === 0) return { x: 0, y: 0 };
  const mean = (values: number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return { x: mean(places.map((one) => one.x)), y: mean(places.map((one) => one.y)) };
}
