import { useState } from "react";
import { allCommands, commandById, commandName, showKeys } from "../commands/command.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { PickList } from "../shell/pick-list.tsx";
import { useEditorStore } from "../state/use-editor.ts";
import { type Listed, listCommands } from "./command-list-model.ts";
import { rememberUse, usedLast } from "./recent.ts";

/** Everything that can be done, by name. */
export default function CommandList() {
  const editor = useEditorStore();
  const [typed, setTyped] = useState("");
  const [recent] = useState(usedLast);
  const commands: readonly Listed[] = allCommands().map((command) => ({
    id: command.id,
    name: commandName(command, editor),
    group: command.group,
    keys: command.keys.map(showKeys).join(", "),
    possible: command.enabled?.(editor) ?? true,
  }));
  const shown = listCommands(commands, typed, recent);
  const run = (id: string) => {
    rememberUse(id);
    closeDialog();
    // The dialog gives the focus back first: many commands work on what has it.
    setTimeout(() => void commandById(id)?.run(editor), 0);
  };
  return (
    <Dialog heading="Everything that can be done" onClose={closeDialog} quietHeading>
      <PickList
        label="What to do"
        hint="Type what to do: cap, arrange, print…"
        none="Nothing here is called that. Try another word."
        typed={typed}
        onType={setTyped}
        onPick={run}
        picks={shown.map(({ id, name, keys, possible }) => ({
          id,
          possible,
          content: (
            <>
              <span>{name}</span>
              <span className="picker-more">{possible ? keys : "not possible now"}</span>
            </>
          ),
        }))}
      />
    </Dialog>
  );
}
