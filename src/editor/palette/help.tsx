import { allCommands, type Command, commandName, showKeys } from "../commands/command.ts";
import { Dialog } from "../shell/dialog.tsx";
import { closeDialog } from "../shell/dialogs.ts";
import { useEditorStore } from "../state/use-editor.ts";
import "./help.css";

const GROUPS: readonly (readonly [Command["group"], string])[] = [
  ["file", "Files"],
  ["edit", "Editing"],
  ["add", "Adding"],
  ["arrange", "Arranging"],
  ["view", "Looking"],
  ["check", "Checking"],
  ["print", "Printing"],
  ["help", "Help"],
];

/** The first steps, every key, and the usual cautions. */
export default function Help() {
  const editor = useEditorStore();
  return (
    <Dialog heading="Keys and first steps" onClose={closeDialog} wide>
      <ol className="help-steps">
        <li>
          Add the connectors of both sides. State from which side you look at each: it mirrors the cavities.
        </li>
        <li>
          Drag from contact to contact. Dropped on the empty sheet, a lead asks what it should end in; dropped
          on a wire, it is spliced into it.
        </li>
        <li>Cap what stays unused, read what is found, then arrange and print.</li>
      </ol>
      <p className="help-caution">
        Airbag circuits, high-voltage cables and feeds without a fuse can injure. Follow the vehicle maker's
        instructions and local law before any of this; where they differ from what is shown here, they are
        right.
      </p>
      <div className="help-keys">
        {GROUPS.map(([group, name]) => {
          const commands = allCommands().filter((command) => command.group === group && command.keys.length);
          if (!commands.length) return null;
          return (
            <section key={group}>
              <h3>{name}</h3>
              <dl>
                {commands.map((command) => (
                  <div key={command.id}>
                    <dt>{commandName(command, editor).replace(/…$/, "")}</dt>
                    <dd>
                      <kbd>{command.keys.map(showKeys).join(" or ")}</kbd>
                    </dd>
                  </div>
                ))}
              </dl>
            </section>
          );
        })}
        <section>
          <h3>Wire table</h3>
          <dl>
            {TABLE_KEYS.map(([what, keys]) => (
              <div key={what}>
                <dt>{what}</dt>
                <dd>
                  <kbd>{keys}</kbd>
                </dd>
              </div>
            ))}
          </dl>
        </section>
      </div>
    </Dialog>
  );
}

const TABLE_KEYS: readonly (readonly [string, string])[] = [
  ["From cell to cell", "arrows, Tab"],
  ["Select a range", "Shift+arrows"],
  ["Edit a cell", "F2, Enter, or type"],
  ["Take the value", "Enter or Tab"],
  ["Put the old value back", "Escape"],
  ["Copy or paste a range", `${showKeys("Mod+c")}, ${showKeys("Mod+v")}`],
  ["Clear the cells", "Delete"],
];
