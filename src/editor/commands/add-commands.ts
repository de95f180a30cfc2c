import { nameKind } from "../../catalogue/describe.ts";
import type { PartKind } from "../../graph/harness.ts";
import { canvasOf } from "../canvas/canvas-store.ts";
import { addPart } from "../canvas/place-model.ts";
import { type Command, register } from "./command.ts";

type Addable = Exclude<PartKind, "connector">;

const KINDS: readonly (readonly [Addable, string])[] = [
  ["module", "Alt+m"],
  ["splice", "Alt+s"],
  ["ground", "Alt+g"],
  ["fuse", "Alt+f"],
  ["relay", "Alt+r"],
  ["switch", ""],
  ["load", "Alt+l"],
  ["speaker", ""],
  ["supply", "Alt+b"],
  ["diode", ""],
  ["resistor", ""],
  ["capacitor", ""],
  ["cap", ""],
];

/** One command for each kind of part: it comes to stand where the menu was opened, or in the middle of the view. */
export function registerAddCommands(): void {
  register(
    ...KINDS.map(
      ([kind, keys]): Command => ({
        id: `add-${kind}`,
        name: `Add a ${nameKind(kind)}`,
        group: "add",
        keys: keys ? [keys] : [],
        run: (editor) => {
          const canvas = canvasOf(editor);
          const { history, derived, dispatch, select } = editor.getState();
          const at = canvas.getState().menu?.spot ?? canvas.view?.centre() ?? { x: 0, y: 0 };
          const { edit, id } = addPart(history.present, derived.scene, kind, at);
          if (dispatch(edit)) select({ parts: new Set([id]) });
          canvas.view?.focus();
        },
      }),
    ),
  );
}
