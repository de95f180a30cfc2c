import { createStore } from "zustand/vanilla";
import type { JobSide, PartId } from "../../graph/harness.ts";

/** What stands open over the page; one at a time. */
export type OpenDialog =
  | { readonly kind: "none" }
  | { readonly kind: "commands" }
  | { readonly kind: "find" }
  | { readonly kind: "help" }
  | { readonly kind: "print" }
  | {
      readonly kind: "add-connector";
      readonly side: JobSide | null;
      /** Where it goes on the drawing; `null` leaves it to the arrangement. */
      readonly at: { readonly x: number; readonly y: number } | null;
      /** The side of a second connector that is asked for straight afterwards. */
      readonly next: JobSide | null;
    }
  | { readonly kind: "paste-rows"; readonly part: PartId; readonly text: string };

export const dialogs = createStore<{ readonly open: OpenDialog }>()(() => ({ open: { kind: "none" } }));

export function openDialog(open: OpenDialog): void {
  dialogs.setState({ open });
}

export function closeDialog(): void {
  dialogs.setState({ open: { kind: "none" } });
}

/** True from when a dialog is asked for, which may have to be fetched first, until it is closed. */
export function dialogPending(): boolean {
  return dialogs.getState().open.kind !== "none";
}

/** Asks for a new connector, at a place on the drawing where one is known. */
export function askForConnector(
  at: { readonly x: number; readonly y: number } | null = null,
  side: JobSide | null = null,
): void {
  openDialog({ kind: "add-connector", side, at, next: null });
}
