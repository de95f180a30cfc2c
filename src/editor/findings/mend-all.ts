import type { Editor } from "../state/store.ts";

/** Makes every cure that is certain, as one step. What would bring something as bad is left, and said. */
export function mendAll(editor: Editor): void {
  const { book, derived, dispatch, say, preview } = editor.getState();
  if (!book || preview) return;
  const { edit, fixed, left } = book.fixAll(derived.harness, derived.traced);
  const rest = left.length
    ? ` ${left.length === 1 ? "One is" : `${left.length} are`} left: its cure would bring something as bad.`
    : "";
  if (!edit) say(`No cure is certain.${rest}`);
  else if (dispatch(edit))
    say(`Mended ${fixed.length === 1 ? "one finding" : `${fixed.length} findings`}.${rest}`);
}
