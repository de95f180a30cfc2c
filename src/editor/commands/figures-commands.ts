import { type PanelPage, panelView } from "../readings/panel/panel-view.ts";
import { desk } from "../shell/preferences.ts";
import type { Editor } from "../state/store.ts";
import { register } from "./command.ts";

function openPage(editor: Editor, view: PanelPage): void {
  panelView.setState({ view });
  editor.getState().set({ panel: "figures" });
  desk.setState({ phoneView: "figures" });
}

export function registerFiguresCommands(): void {
  register(
    {
      id: "toggle-figures",
      name: (editor) => (editor.getState().panel === "figures" ? "Hide figures" : "Show figures"),
      group: "view",
      keys: ["Alt+v"],
      run: (editor) => {
        const { panel, set } = editor.getState();
        set({ panel: panel === "figures" ? "none" : "figures" });
        desk.setState({ phoneView: "figures" });
      },
    },
    {
      id: "size-harness",
      name: "Size wires and fuses…",
      group: "check",
      keys: [],
      run: (editor) => openPage(editor, "sizes"),
    },
    {
      id: "whole-figures",
      name: "Drain, short circuits, speakers, bundles…",
      group: "check",
      keys: [],
      run: (editor) => openPage(editor, "whole"),
    },
  );
}
