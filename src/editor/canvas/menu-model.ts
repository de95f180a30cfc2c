import type { PartKind } from "../../graph/harness.ts";
import { allCommands, commandName, showKeys } from "../commands/command.ts";
import type { Editor } from "../state/store.ts";
import type { MenuItem } from "./popup-menu.tsx";

/** What a lead let go on empty ground may end in, the most usual first. */
export const LEAD_ENDS: readonly { readonly kind: PartKind | "loose"; readonly name: string }[] = [
  { kind: "cap", name: "Cap it: a spare" },
  { kind: "splice", name: "Splice" },
  { kind: "ground", name: "Ground" },
  { kind: "fuse", name: "Fuse" },
  { kind: "relay", name: "Relay" },
  { kind: "switch", name: "Switch" },
  { kind: "diode", name: "Diode" },
  { kind: "resistor", name: "Resistor" },
  { kind: "capacitor", name: "Capacitor" },
  { kind: "load", name: "Lamp or other load" },
  { kind: "speaker", name: "Speaker" },
  { kind: "supply", name: "Battery" },
  { kind: "loose", name: "Leave it loose" },
];

const ON_SELECTION: readonly (readonly string[])[] = [
  ["edit-text", "start-lead", "show-details"],
  ["select-circuit", "zoom-selection", "cap-selected"],
  ["cut", "copy", "paste", "duplicate", "delete"],
  ["turn-part", "pin", "unpin", "exchange-leads", "splice-into"],
  ["align-left", "align-top", "distribute-across", "distribute-down"],
];

const ON_GROUND: readonly (readonly string[])[] = [
  [
    "add-connector",
    "add-splice",
    "add-ground",
    "add-fuse",
    "add-relay",
    "add-switch",
    "add-load",
    "add-supply",
  ],
  ["paste", "select-all"],
  ["arrange", "zoom-fit"],
];

/** The commands that a menu opened on the drawing shows: those that are possible now, in groups. */
export function menuItems(editor: Editor): readonly MenuItem[] {
  const { selection } = editor.getState();
  const groups = selection.parts.size + selection.wires.size > 0 ? ON_SELECTION : ON_GROUND;
  const items: MenuItem[] = [];
  for (const group of groups) {
    let first = items.length > 0;
    for (const id of group) {
      const command = allCommands().find((one) => one.id === id);
      if (!command || !(command.enabled?.(editor) ?? true)) continue;
      const [keys] = command.keys;
      items.push({
        id,
        name: commandName(command, editor),
        ...(keys ? { keys: showKeys(keys) } : {}),
        first,
        run: () => void command.run(editor),
      });
      first = false;
    }
  }
  return items;
}
