import type { Files } from "../files/files.ts";
import { register } from "./command.ts";

export function registerFileCommands(files: Files): void {
  register(
    { id: "file-new", name: "New harness", group: "file", keys: ["Alt+n"], run: () => files.startNew() },
    { id: "file-open", name: "Open a file…", group: "file", keys: ["Mod+o"], run: () => files.pick() },
    { id: "file-save", name: "Save", group: "file", keys: ["Mod+s"], run: () => files.save() },
    {
      id: "file-save-as",
      name: "Save as…",
      group: "file",
      keys: ["Mod+Shift+s"],
      run: () => files.save({ as: true }),
    },
    {
      id: "file-recent",
      name: "Recent harnesses…",
      group: "file",
      keys: ["Alt+o"],
      run: () => files.show("recent"),
    },
    {
      id: "file-samples",
      name: "Open a sample…",
      group: "file",
      keys: ["Alt+e"],
      run: () => files.show("samples"),
    },
  );
}
