import type { KeyPosition } from "../../electrical/operate/key-state.ts";
import { keysGoElsewhere } from "../canvas/elsewhere.ts";
import { type Overlay, readingsOf } from "../readings/readings-store.ts";
import { desk } from "../shell/preferences.ts";
import { isNarrow } from "../shell/use-narrow.ts";
import type { Editor } from "../state/store.ts";
import { type Command, register } from "./command.ts";

const isOn = (editor: Editor): boolean => readingsOf(editor).getState().on;

const KEYS: readonly KeyPosition[] = ["off", "accessory", "run", "crank"];
const OVERLAYS: readonly (readonly [Overlay, string])[] = [
  ["volts", "volts at contacts"],
  ["amps", "amperes in wires"],
  ["load", "load of wires, per cent of what they may carry"],
  ["drop", "volts lost in wires"],
];

function keyCommand(key: KeyPosition): Command {
  return {
    id: `readings-key-${key}`,
    name: `Readings: key at ${key}`,
    group: "check",
    keys: [],
    enabled: (editor) => isOn(editor) && readingsOf(editor).getState().state.key !== key,
    run: (editor) => readingsOf(editor).getState().setKey(key),
  };
}

function overlayCommand([overlay, words]: (typeof OVERLAYS)[number]): Command {
  return {
    id: `readings-show-${overlay}`,
    name: `Readings: show ${words}`,
    group: "check",
    keys: [],
    enabled: (editor) => isOn(editor) && readingsOf(editor).getState().overlay !== overlay,
    run: (editor) => readingsOf(editor).getState().show(overlay),
  };
}

/** What the harness shows when it is switched on: the readings, and in which state. */
export function registerReadingsCommands(): void {
  register(
    {
      id: "toggle-readings",
      name: (editor) => (isOn(editor) ? "Hide readings" : "Show readings: volts, amperes, load, drop"),
      group: "check",
      keys: ["v"],
      enabled: () => !keysGoElsewhere(),
      run: (editor) => {
        const { on, turn } = readingsOf(editor).getState();
        turn(!on);
        if (!on && isNarrow()) desk.setState({ phoneView: "drawing" });
      },
    },
    ...KEYS.map(keyCommand),
    ...OVERLAYS.map(overlayCommand),
  );
}
