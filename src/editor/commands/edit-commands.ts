import type { Cable } from "../../graph/harness.ts";
import { redoName, undoName } from "../../graph/history.ts";
import { canvasOf } from "../canvas/canvas-store.ts";
import { CABLE_WORDS, canMake, makeCable } from "../inspector/cable-edits.ts";
import { openDialog } from "../shell/dialogs.ts";
import { desk } from "../shell/preferences.ts";
import type { Editor } from "../state/store.ts";
import { type Command, register } from "./command.ts";

export function sayUndo(editor: Editor): string {
  const name = undoName(editor.getState().history);
  return name === null ? "Undo" : `Undo: ${name}`;
}

export function sayRedo(editor: Editor): string {
  const name = redoName(editor.getState().history);
  return name === null ? "Redo" : `Redo: ${name}`;
}

function onlyHousing(editor: Editor) {
  const { selection, history } = editor.getState();
  if (selection.parts.size !== 1) return null;
  const [id] = selection.parts;
  const part = id === undefined ? undefined : history.present.parts[id];
  return part?.kind === "connector" || part?.kind === "module" ? part : null;
}

const CABLES: readonly Cable["kind"][] = ["twisted-pair", "shielded-pair", "shielded", "multicore"];

function cableCommand(kind: Cable["kind"]): Command {
  const onlyWires = (editor: Editor) => {
    const { parts, wires } = editor.getState().selection;
    return parts.size === 0 ? [...wires] : [];
  };
  return {
    id: `make-${kind}`,
    name: `Make a ${CABLE_WORDS[kind]} of the selected wires`,
    group: "edit",
    keys: [],
    enabled: (editor) => canMake(kind, onlyWires(editor).length),
    run: (editor) => {
      const { history, dispatch } = editor.getState();
      dispatch(makeCable(history.present, onlyWires(editor), kind));
    },
  };
}

export function registerEditCommands(): void {
  register(
    {
      id: "undo",
      name: sayUndo,
      group: "edit",
      keys: ["Mod+z"],
      enabled: (editor) => editor.getState().history.past.length > 0,
      run: (editor) => {
        const { history, undo, say } = editor.getState();
        const name = undoName(history);
        undo();
        if (name !== null) say(`Undone: ${name}.`);
      },
    },
    {
      id: "redo",
      name: sayRedo,
      group: "edit",
      keys: ["Mod+Shift+z", "Mod+y"],
      enabled: (editor) => editor.getState().history.future.length > 0,
      run: (editor) => {
        const { history, redo, say } = editor.getState();
        const name = redoName(history);
        redo();
        if (name !== null) say(`Done again: ${name}.`);
      },
    },
    {
      id: "add-connector",
      name: "Add a connector…",
      group: "add",
      keys: ["n"],
      run: (editor) => {
        // From the menu of the drawing it goes where the menu was opened.
        const at = canvasOf(editor).getState().menu?.spot ?? null;
        openDialog({ kind: "add-connector", side: null, at, next: null });
      },
    },
    {
      id: "new-adapter",
      name: "New adapter: two connectors…",
      group: "add",
      keys: [],
      run: () => openDialog({ kind: "add-connector", side: "vehicle", at: null, next: "equipment" }),
    },
    {
      id: "paste-rows",
      name: (editor) => {
        const part = onlyHousing(editor);
        return part ? `Paste rows into ${part.designation}…` : "Paste rows into a connector…";
      },
      group: "edit",
      keys: [],
      enabled: (editor) => onlyHousing(editor) !== null,
      run: (editor) => {
        const part = onlyHousing(editor);
        if (part) openDialog({ kind: "paste-rows", part: part.id, text: "" });
      },
    },
    {
      id: "keep-connector",
      name: (editor) => {
        const part = onlyHousing(editor);
        return part?.kind === "connector"
          ? `Keep ${part.designation} as a connector…`
          : "Keep as a connector…";
      },
      group: "edit",
      keys: [],
      enabled: (editor) => onlyHousing(editor)?.kind === "connector",
      run: (editor) => {
        const part = onlyHousing(editor);
        if (part?.kind === "connector") openDialog({ kind: "keep-connector", part: part.id });
      },
    },
    {
      id: "show-details",
      name: "Show details of the selection",
      group: "view",
      keys: ["i"],
      run: (editor) => {
        editor.getState().set({ panel: "inspector" });
        desk.setState({ phoneView: "details" });
      },
    },
    ...CABLES.map(cableCommand),
  );
}
