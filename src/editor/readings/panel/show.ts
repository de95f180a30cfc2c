import type { About } from "../../../rules/rule.ts";
import { showOnCanvas } from "../../canvas/show.ts";
import { desk } from "../../shell/preferences.ts";
import { isNarrow } from "../../shell/use-narrow.ts";
import type { Editor, Selection } from "../../state/store.ts";

/** Selects a thing on the drawing and brings it into sight; on a phone the drawing comes forward. */
export function showThing(editor: Editor, about: readonly About[]): void {
  if (isNarrow()) desk.setState({ phoneView: "drawing" });
  showOnCanvas(editor, about);
}

/** Selects a thing and stays in the panel. */
export function selectThing(editor: Editor, selection: Partial<Selection>): void {
  editor.getState().select(selection);
}
