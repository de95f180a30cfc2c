import { openDialog } from "../shell/dialogs.ts";
import { register } from "./command.ts";

export function registerHelpCommands(): void {
  register(
    {
      id: "command-list",
      name: "Everything that can be done…",
      group: "help",
      keys: ["Mod+k", "/"],
      run: () => openDialog({ kind: "commands" }),
    },
    {
      id: "help",
      name: "Keys and first steps…",
      group: "help",
      keys: ["F1", "Shift+?"],
      run: () => openDialog({ kind: "help" }),
    },
  );
}
