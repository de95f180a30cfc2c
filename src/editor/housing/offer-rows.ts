import { openDialog } from "../shell/dialogs.ts";
import type { Editor } from "../state/store.ts";

/**
 * Text pasted while one connector or module is selected is taken for rows of its chart, and shown before it is
 * written. Returns whether it was.
 */
export function offerRows(editor: Editor, text: string): boolean {
  const { selection, history } = editor.getState();
  const [id] = selection.parts;
  const part = id && selection.parts.size === 1 ? history.present.parts[id] : undefined;
  if (part?.kind !== "connector" && part?.kind !== "module") return false;
  if (!/[\t;,|]|\n./.test(text)) return false;
  openDialog({ kind: "paste-rows", part: part.id, text });
  return true;
}
