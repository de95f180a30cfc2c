import { openDialog } from "../shell/dialogs.ts";
import { register } from "./command.ts";

export function registerPrintCommands(): void {
  register({
    id: "print",
    name: "Print or save the diagram…",
    group: "print",
    keys: ["Mod+p"],
    enabled: (editor) => Object.keys(editor.getState().history.present.parts).length > 0,
    run: () => openDialog({ kind: "print" }),
  });
}
