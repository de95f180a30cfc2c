import { contactKey } from "../../graph/contacts.ts";
import { exchange } from "../../graph/edits/lead.ts";
import type { PartId, WireId } from "../../graph/harness.ts";
import { editAt } from "../canvas/canvas-keys.ts";
import { canvasOf } from "../canvas/canvas-store.ts";
import { copySelection, duplicateSelection, pasteFromClipboard } from "../canvas/clipboard.ts";
import { keysGoElsewhere } from "../canvas/elsewhere.ts";
import { handOf } from "../canvas/hand.ts";
import type { Box } from "../canvas/hit-model.ts";
import { cursorOf } from "../canvas/keyboard-model.ts";
import { boxOfAbout } from "../canvas/marks-model.ts";
import { capEdit, capTargets, cutWire } from "../canvas/place-model.ts";
import { wholeSelection } from "../canvas/select-model.ts";
import { boundsOf } from "../canvas/view-model.ts";
import type { Editor } from "../state/store.ts";
import { register } from "./command.ts";

const chosen = (editor: Editor): number => {
  const { parts, wires } = editor.getState().selection;
  return parts.size + wires.size;
};
const anySelected = (editor: Editor): boolean => chosen(editor) > 0 && !keysGoElsewhere();
const drawn = (editor: Editor): boolean =>
  editor.getState().derived.scene.parts.size > 0 && !keysGoElsewhere();

/** "X1", or "3 things". */
function whatIsChosen(editor: Editor): string {
  const { selection, history } = editor.getState();
  const [part] = selection.parts;
  const [wire] = selection.wires;
  if (chosen(editor) > 1) return `${chosen(editor)} things`;
  const only = part ? history.present.parts[part] : wire ? history.present.wires[wire] : undefined;
  return only?.designation ?? "1 thing";
}

/** Selecting, moving about, and what is done to what is selected. */
export function registerCanvasCommands(): void {
  register(
    {
      id: "select-all",
      name: "Select all",
      group: "edit",
      keys: ["Mod+a"],
      enabled: drawn,
      run: (editor) => editor.getState().select(wholeSelection(editor.getState().history.present)),
    },
    {
      id: "select-circuit",
      name: "Select the whole circuit",
      group: "edit",
      keys: ["c"],
      enabled: (editor) => circuitWires(editor).length > 0,
      run: (editor) => editor.getState().select({ wires: new Set(circuitWires(editor)) }),
    },
    {
      id: "copy",
      name: "Copy",
      group: "edit",
      keys: ["Mod+c"],
      enabled: anySelected,
      run: async (editor) => void (await copySelection(editor)),
    },
    {
      id: "cut",
      name: "Cut",
      group: "edit",
      keys: ["Mod+x"],
      enabled: anySelected,
      run: async (editor) => {
        if (await copySelection(editor)) removeSelection(editor);
      },
    },
    // Without a key of its own: the browser's paste brings the text along and asks no permission.
    { id: "paste", name: "Paste parts", group: "edit", keys: [], run: pasteFromClipboard },
    {
      id: "duplicate",
      name: "Duplicate",
      group: "edit",
      keys: ["Mod+d"],
      enabled: anySelected,
      run: duplicateSelection,
    },
    {
      id: "delete",
      name: (editor) => (anySelected(editor) ? `Delete ${whatIsChosen(editor)}` : "Delete"),
      group: "edit",
      keys: ["Delete", "Backspace"],
      enabled: anySelected,
      run: removeSelection,
    },
    {
      id: "edit-text",
      name: "Edit the text",
      group: "edit",
      keys: ["F2"],
      enabled: anySelected,
      run: (editor) => void editAt(editor, cursorOf(editor.getState().selection)),
    },
    {
      id: "start-lead",
      name: "Draw a lead from this contact",
      group: "edit",
      keys: [],
      enabled: (editor) => editor.getState().selection.contact !== null,
      run: (editor) => {
        const { contact } = editor.getState().selection;
        if (contact) handOf(editor)?.lead.begin({ contact }, false);
        canvasOf(editor).view?.focus();
      },
    },
    {
      id: "cap-selected",
      name: (editor) => {
        const count = targets(editor).length;
        return count > 1 ? `Cap ${count} spares` : "Cap this spare";
      },
      group: "edit",
      keys: [],
      enabled: (editor) => targets(editor).length > 0,
      run: (editor) => {
        const { history, derived, dispatch } = editor.getState();
        dispatch(capEdit(history.present, derived.scene, targets(editor)));
      },
    },
    {
      id: "exchange-leads",
      name: "Exchange these two leads",
      group: "edit",
      keys: [],
      enabled: (editor) => pairOfWires(editor) !== null,
      run: (editor) => {
        const pair = pairOfWires(editor);
        const { history, dispatch } = editor.getState();
        if (pair) dispatch(exchange(history.present, pair[0], pair[1]));
      },
    },
    {
      id: "splice-into",
      name: "Put a splice into this wire",
      group: "edit",
      keys: [],
      enabled: (editor) => onlyWire(editor) !== null,
      run: (editor) => {
        const wire = onlyWire(editor);
        const { history, derived, dispatch } = editor.getState();
        if (wire) dispatch(cutWire(history.present, derived.scene, wire));
      },
    },
    {
      id: "zoom-fit",
      name: "Show the whole drawing",
      group: "view",
      keys: ["0", "Mod+0"],
      run: (editor) => canvasOf(editor).view?.fit(true),
    },
    {
      id: "zoom-selection",
      name: "Show what is selected",
      group: "view",
      keys: ["z"],
      enabled: anySelected,
      run: (editor) => {
        const box = selectedBox(editor);
        if (box) canvasOf(editor).view?.show(box);
      },
    },
    {
      id: "zoom-in",
      name: "Zoom in",
      group: "view",
      keys: ["+", "=", "Shift++"],
      run: (editor) => canvasOf(editor).view?.zoomBy(1.25),
    },
    {
      id: "zoom-out",
      name: "Zoom out",
      group: "view",
      keys: ["-"],
      run: (editor) => canvasOf(editor).view?.zoomBy(0.8),
    },
    {
      id: "zoom-life",
      name: "Life-size",
      group: "view",
      keys: ["1"],
      run: (editor) => canvasOf(editor).view?.zoomTo(1),
    },
  );
}

function removeSelection(editor: Editor): void {
  const { selection, dispatch, closeStep } = editor.getState();
  if (!anySelected(editor)) return;
  dispatch({ kind: "remove", parts: [...selection.parts], wires: [...selection.wires] });
  closeStep();
}

function circuitWires(editor: Editor): readonly WireId[] {
  const { selection, derived } = editor.getState();
  const { contact, wires } = selection;
  const circuits = new Set([...wires].map((id) => derived.traced.circuitOfWire(id)));
  if (contact) circuits.add(derived.traced.circuitOf(contactKey(contact.part, contact.contact)));
  return [...circuits].flatMap((circuit) => circuit?.wires ?? []);
}

function targets(editor: Editor) {
  const { history, derived, selection } = editor.getState();
  return capTargets(history.present, derived.traced, selection);
}

function onlyWire(editor: Editor): WireId | null {
  const { wires, parts } = editor.getState().selection;
  const [wire] = wires;
  return wire && wires.size === 1 && parts.size === 0 ? wire : null;
}

/** The contacts on one side of two selected wires, for exchanging what lands on them. */
function pairOfWires(editor: Editor) {
  const { selection, history } = editor.getState();
  if (selection.wires.size !== 2) return null;
  const [a, b] = [...selection.wires].map((id) => history.present.wires[id]);
  if (!a || !b) return null;
  for (const index of [1, 0] as const) {
    const [p, q] = [a.ends[index], b.ends[index]];
    if (p !== "loose" && q !== "loose" && (p.part !== q.part || p.contact !== q.contact))
      return [p, q] as const;
  }
  return null;
}

function selectedBox(editor: Editor): Box | null {
  const { selection, derived } = editor.getState();
  const about = [
    ...[...selection.parts].map((part: PartId) => ({ part })),
    ...[...selection.wires].map((wire: WireId) => ({ wire })),
  ];
  return boundsOf(
    about.map((one) => boxOfAbout(derived.scene, one)).filter((one): one is Box => one !== null),
  );
}
