import type { Editor } from "../state/store.ts";

/**
 * One thing the editor can do. Every menu, key and the command list read the same registry, so that whatever
 * can be done can also be found by name and done without a mouse.
 */
export type Command = {
  readonly id: string;
  /** What will happen, in the trade's words: "Cap 3 spares". May depend on the selection. */
  readonly name: string | ((editor: Editor) => string);
  readonly group: "file" | "edit" | "add" | "view" | "arrange" | "check" | "print" | "help";
  /** Keys as KeyboardEvent names joined by "+", `Mod` being Ctrl or Command: "Mod+Shift+z". */
  readonly keys: readonly string[];
  /** Where given and false, the command is shown as not possible now. */
  readonly enabled?: (editor: Editor) => boolean;
  readonly run: (editor: Editor) => void | Promise<void>;
};

export function commandName(command: Command, editor: Editor): string {
  return typeof command.name === "string" ? command.name : command.name(editor);
}

const commands = new Map<string, Command>();

/** Adds commands to the registry; the same id again replaces the earlier one (hot reloading does that). */
export function register(...added: readonly Command[]): void {
  for (const command of added) commands.set(command.id, command);
}

export function allCommands(): readonly Command[] {
  return [...commands.values()];
}

export function commandById(id: string): Command | undefined {
  return commands.get(id);
}

const isMac = () => typeof navigator !== "undefined" && /mac|iphone|ipad/i.test(navigator.platform);

/** "Mod+Shift+z" for an event, with modifiers in one order, so that it can be compared. */
export function keysOf(event: KeyboardEvent): string {
  const mod = isMac() ? event.metaKey : event.ctrlKey;
  // With Alt some systems type another character: the key's place then says which one was meant.
  const letter =
    event.altKey && !/^[a-z]$/i.test(event.key) ? /^Key([A-Z])$/.exec(event.code)?.[1] : undefined;
  const typed = letter ?? event.key;
  const key = typed === " " ? "Space" : typed.length === 1 ? typed.toLowerCase() : typed;
  return [mod ? "Mod" : "", event.altKey ? "Alt" : "", event.shiftKey ? "Shift" : "", key]
    .filter(Boolean)
    .join("+");
}

/** The keys as they are printed in a menu: "Ctrl+Shift+Z". */
export function showKeys(keys: string): string {
  return keys
    .split("+")
    .map((key) => (key === "Mod" ? (isMac() ? "⌘" : "Ctrl") : key.length === 1 ? key.toUpperCase() : key))
    .join("+");
}

/** Runs the command that these keys belong to. Returns whether there was one. */
export function runKeys(editor: Editor, keys: string): boolean {
  const command = allCommands().find((one) => one.keys.includes(keys) && (one.enabled?.(editor) ?? true));
  if (!command) return false;
  void command.run(editor);
  return true;
}
