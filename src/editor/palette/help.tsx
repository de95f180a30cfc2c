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
        <Keys name="On the drawing, by keys" keys={DRAWING_KEYS} />
        <Keys name="On the drawing, by hand" keys={HAND_MOVES} />
        <Keys name="Wire table" keys={TABLE_KEYS} />
      </div>
    </Dialog>
  );
}

type KeyList = readonly (readonly [string, string])[];

function Keys({ name, keys }: { readonly name: string; readonly keys: KeyList }) {
  return (
    <section>
      <h3>{name}</h3>
      <dl>
        {keys.map(([what, press]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>
              <kbd>{press}</kbd>
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

const DRAWING_KEYS: KeyList = [
  ["From part to part", "arrows"],
  ["Into a part's contacts, and out", "Enter, Escape"],
  ["Along a contact's wire", "Right or W"],
  ["Draw a lead from a contact, and join it", "J, then Enter"],
  ["Edit the text", "F2"],
  ["What can be done here", "Shift+F10"],
];

const HAND_MOVES: KeyList = [
  ["Move the drawing", "drag the ground, or hold Space"],
  ["Nearer and farther", "wheel, or two fingers"],
  ["Select several", "Shift and drag, or Shift and click"],
  ["Draw a lead", "drag from a contact, or tap two"],
  ["Move a part without snapping", "hold Alt"],
  ["What can be done here", "right click, or press long"],
];

const TABLE_KEYS: KeyList = [
  ["From cell to cell", "arrows, Tab"],
  ["Select a range", "Shift+arrows"],
  ["Edit a cell", "F2, Enter, or type"],
  ["Take the value", "Enter or Tab"],
  ["Put the old value back", "Escape"],
  ["Copy or paste a range", `${showKeys("Mod+c")}, ${showKeys("Mod+v")}`],
  ["Clear the cells", "Delete"],
];
