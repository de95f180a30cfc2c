import { pasteText } from "../canvas/clipboard.ts";
import { keysOf, runKeys } from "../commands/command.ts";
import type { Editor } from "../state/store.ts";
import { dialogPending, typeAhead } from "./dialogs.ts";

/**
 * One listener for every command's keys. While a person types in a field only keys with Mod reach a command,
 * and not those that mean something to the text itself (undo, copy, select all).
 */
export function listenForKeys(editor: Editor): void {
  window.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || event.isComposing) return;
    const keys = keysOf(event);
    const target = event.target instanceof HTMLElement ? event.target : null;
    // What is typed while a dialog is still being fetched is meant for it, not for the drawing.
    const within = target?.closest("dialog[open], [role=dialog], [role=alertdialog], [role=menu]");
    if (dialogPending() && !within && !(event.ctrlKey || event.metaKey || event.altKey)) {
      typeAhead(event.key);
      return;
    }
    if (within) return;
    if (target && takesText(target) && !passesText(keys)) return;
    if (runKeys(editor, keys)) event.preventDefault();
  });
  // With the focus on nothing a paste is meant for the drawing.
  window.addEventListener("paste", (event) => {
    if (event.defaultPrevented || event.target !== document.body) return;
    event.preventDefault();
    void pasteText(editor, event.clipboardData?.getData("text/plain") ?? "");
  });
}

const TEXT_KEYS = new Set(["Mod+z", "Mod+Shift+z", "Mod+y", "Mod+c", "Mod+x", "Mod+v", "Mod+a", "Mod+d"]);

/** True where keys may run a command although a field has the focus. */
export function passesText(keys: string): boolean {
  if (/^F([1-9]|1[0-2])$/.test(keys)) return keys !== "F2";
  return (
    keys.startsWith("Mod+") && !TEXT_KEYS.has(keys) && !/Arrow|Home|End|Backspace|Delete|Enter/.test(keys)
  );
}

function takesText(element: HTMLElement): boolean {
  if (element.isContentEditable) return true;
  if (element instanceof HTMLInputElement) {
    return !["button", "checkbox", "radio", "range", "submit"].includes(element.type);
  }
  return element instanceof HTMLTextAreaElement || element instanceof HTMLSelectElement;
}
