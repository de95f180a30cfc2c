import { createStore } from "zustand/vanilla";
import type { JobSide, PartId } from "../../graph/harness.ts";

/** What stands open over the page; one at a time. */
export type OpenDialog =
  | { readonly kind: "none" }
  | { readonly kind: "commands" }
  | { readonly kind: "find" }
  | { readonly kind: "help" }
  | { readonly kind: "print" }
  | { readonly kind: "charts" }
  /** The rule book: all of it, or the page of one rule. */
  | { readonly kind: "rules"; readonly rule: string | null }
  /** By which books the harness is checked, and the shop's own rules. */
  | { readonly kind: "profile" }
  | {
      readonly kind: "add-connector";
      readonly side: JobSide | null;
      /** Where it goes on the drawing; `null` leaves it to the arrangement. */
      readonly at: { readonly x: number; readonly y: number } | null;
      /** The side of a second connector that is asked for straight afterwards. */
      readonly next: JobSide | null;
      /** A connector file that was opened or dropped: it is taken in and picked. */
      readonly file?: { readonly name: string; readonly text: string };
    }
  | { readonly kind: "keep-connector"; readonly part: PartId }
  | { readonly kind: "paste-rows"; readonly part: PartId; readonly text: string };

export const dialogs = createStore<{ readonly open: OpenDialog }>()(() => ({ open: { kind: "none" } }));

let typed = "";

export function openDialog(open: OpenDialog): void {
  typed = "";
  dialogs.setState({ open });
}

export function closeDialog(): void {
  dialogs.setState({ open: { kind: "none" } });
}

/** True from when a dialog is asked for, which may have to be fetched first, until it is closed. */
export function dialogPending(): boolean {
  return dialogs.getState().open.kind !== "none";
}

/** Keeps what is typed for a dialog that is still being fetched. */
export function typeAhead(key: string): void {
  if (key.length === 1) typed += key;
  else if (key === "Backspace") typed = typed.slice(0, -1);
}

/** What was typed for the dialog before it stood there. */
export function typedAhead(): string {
  return typed;
}

/** Asks for a new connector, at a place on the drawing where one is known. */
export function askForConnector(
  at: { readonly x: number; readonly y: number } | null = null,
  side: JobSide | null = null,
): void {
  openDialog({ kind: "add-connector", side, at, next: null });
}
