import type { ReactNode } from "react";
import { commandById, commandName, showKeys } from "../commands/command.ts";
import { useEditor, useEditorStore } from "../state/use-editor.ts";

/** A button that runs a command. Its name and whether it can run follow the state of the editor. */
export function CommandButton(props: {
  readonly id: string;
  /** What is shown; without it the command's own name. */
  readonly children?: ReactNode;
  readonly className?: string;
}) {
  const editor = useEditorStore();
  const command = commandById(props.id);
  const name = useEditor(() => (command ? commandName(command, editor) : ""));
  const enabled = useEditor(() => command?.enabled?.(editor) ?? true);
  if (!command) return null;
  const keys = command.keys[0] ? ` (${showKeys(command.keys[0])})` : "";
  return (
    <button
      type="button"
      className={`button ${props.className ?? ""}`}
      {...(props.children === undefined ? {} : { "aria-label": name.replace(/…$/, "") })}
      title={name + keys}
      aria-disabled={!enabled}
      onClick={() => {
        if (enabled) void command.run(editor);
      }}
    >
      {props.children ?? name}
    </button>
  );
}
