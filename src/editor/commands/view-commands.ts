import type { Settings } from "../../graph/harness.ts";
import { openDialog } from "../shell/dialogs.ts";
import { desk } from "../shell/preferences.ts";
import type { Editor, Panel, Theme } from "../state/store.ts";
import { register } from "./command.ts";

const settingsOf = (editor: Editor): Settings => editor.getState().history.present.settings;

function togglePanel(editor: Editor, panel: Panel): void {
  const { panel: shown, set } = editor.getState();
  set({ panel: shown === panel ? "none" : panel });
}

function setVoltage(editor: Editor, systemVoltage_V: Settings["systemVoltage_V"]): void {
  editor.getState().dispatch({ kind: "change-settings", changes: { systemVoltage_V } });
}

const themes: readonly (readonly [Theme, string])[] = [
  ["paper", "Light: ink on paper"],
  ["workshop", "Dark: for the workshop at night"],
  ["system", "Light or dark as the system has it"],
];

export function registerViewCommands(): void {
  register(
    {
      id: "find",
      name: "Find a part or a wire…",
      group: "view",
      keys: ["Mod+f"],
      run: () => openDialog({ kind: "find" }),
    },
    {
      id: "toggle-findings",
      name: (editor) => (editor.getState().panel === "findings" ? "Hide findings" : "Show findings"),
      group: "check",
      keys: ["Alt+c"],
      run: (editor) => {
        togglePanel(editor, "findings");
        desk.setState({ phoneView: "findings" });
      },
    },
    {
      id: "toggle-details",
      name: (editor) => (editor.getState().panel === "inspector" ? "Hide details" : "Show details"),
      group: "view",
      keys: ["Alt+d"],
      run: (editor) => {
        togglePanel(editor, "inspector");
        desk.setState({ phoneView: "details" });
      },
    },
    {
      id: "toggle-wire-table",
      name: (editor) => (editor.getState().wireTable ? "Hide the wire table" : "Show the wire table"),
      group: "view",
      keys: ["Alt+w"],
      run: (editor) => {
        const { wireTable, set } = editor.getState();
        set({ wireTable: !wireTable });
        desk.setState({ phoneView: wireTable ? "drawing" : "wires" });
      },
    },
    {
      id: "toggle-minimap",
      name: () => (desk.getState().minimap ? "Hide the drawing in small" : "Show the drawing in small"),
      group: "view",
      keys: [],
      run: () => desk.setState(({ minimap }) => ({ minimap: !minimap })),
    },
    {
      id: "toggle-units",
      name: (editor) =>
        settingsOf(editor).sizes === "metric" ? "Write wire sizes in AWG" : "Write wire sizes in mm²",
      group: "view",
      keys: [],
      run: (editor) => {
        const sizes = settingsOf(editor).sizes === "metric" ? "awg" : "metric";
        editor.getState().dispatch({ kind: "change-settings", changes: { sizes } });
      },
    },
    {
      id: "toggle-voltage",
      name: (editor) =>
        settingsOf(editor).systemVoltage_V === 24 ? "Make it a 12 V system" : "Make it a 24 V system",
      group: "view",
      keys: [],
      run: (editor) => setVoltage(editor, settingsOf(editor).systemVoltage_V === 24 ? 12 : 24),
    },
    ...themes.map(([theme, name]) => ({
      id: `theme-${theme}`,
      name,
      group: "view" as const,
      keys: [],
      enabled: (editor: Editor) => editor.getState().theme !== theme,
      run: (editor: Editor) => editor.getState().set({ theme }),
    })),
  );
}
