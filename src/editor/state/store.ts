import { createStore } from "zustand/vanilla";
import type { Edit } from "../../graph/edits/edit.ts";
import type { ContactRef, Harness, PartId, WireId } from "../../graph/harness.ts";
import { closeStep, edit, type History, record, redo, startHistory, undo } from "../../graph/history.ts";
import { emptyHarness } from "../../graph/make.ts";
import { type Derived, settle } from "./derive.ts";

/** What a person has picked out: parts, wires, and at most one contact that the keyboard stands on. */
export type Selection = {
  readonly parts: ReadonlySet<PartId>;
  readonly wires: ReadonlySet<WireId>;
  readonly contact: ContactRef | null;
};

/** What the pointer or the keyboard rests on; its whole circuit lights up. */
export type Pointed = ContactRef | { readonly wire: WireId } | null;

export type Notice = { readonly tone: "said" | "refused"; readonly text: string; readonly at: number };

export type Theme = "paper" | "workshop" | "system";

/** Which of the side panels is open beside the canvas. */
export type Panel = "inspector" | "findings" | "figures" | "none";

export type EditorState = {
  readonly history: History;
  readonly derived: Derived;
  readonly selection: Selection;
  readonly pointed: Pointed;
  readonly notice: Notice | null;
  readonly theme: Theme;
  readonly panel: Panel;
  readonly wireTable: boolean;
  /** Changes with every other document that is opened: the canvas then shows the whole of it. */
  readonly documentKey: number;
};

export const NOTHING: Selection = { parts: new Set(), wires: new Set(), contact: null };

export type EditorActions = {
  /** Applies an edit as one step; a refusal is said to the person. Returns whether it was made. */
  dispatch(change: Edit | { readonly ok: false; readonly why: string }, mergeKey?: string): boolean;
  /** Takes a harness made elsewhere (an arrangement) as one step under a name. */
  take(name: string, harness: Harness): void;
  /** Takes places that were found for a harness just opened: nothing that anybody would undo. */
  adopt(harness: Harness): void;
  /** Opens another document: its own history, nothing selected. */
  open(harness: Harness): void;
  undo(): void;
  redo(): void;
  closeStep(): void;
  select(selection: Partial<Selection>): void;
  point(pointed: Pointed): void;
  say(text: string, tone?: Notice["tone"]): void;
  set(changes: Partial<Pick<EditorState, "theme" | "panel" | "wireTable" | "notice">>): void;
};

/**
 * The editor's one store. The document changes only through edits; everything derived is settled in the same
 * step, so that no view ever shows a harness beside another one's findings.
 */
export function createEditor(harness: Harness = emptyHarness()) {
  const first = settle(harness, null);
  return createStore<EditorState & EditorActions>()((set, get) => {
    const show = (history: History): void => {
      const derived = settle(history.present, get().derived);
      set({
        history: derived.harness === history.present ? history : { ...history, present: derived.harness },
        derived,
        selection: stillThere(get().selection, derived.harness),
        pointed: null,
      });
    };
    return {
      history: startHistory(first.harness),
      derived: first,
      selection: NOTHING,
      pointed: null,
      notice: null,
      theme: "system",
      panel: "findings",
      wireTable: false,
      documentKey: 0,
      dispatch(change, mergeKey) {
        if ("ok" in change) {
          get().say(change.why, "refused");
          return false;
        }
        const result = edit(get().history, change, mergeKey ?? null);
        if (!result.ok) {
          get().say(result.why, "refused");
          return false;
        }
        show(result.history);
        return true;
      },
      take: (name, next) => show(record(get().history, name, next)),
      adopt: (next) => show({ ...get().history, present: next }),
      open(next) {
        const derived = settle(next, null);
        set({
          history: startHistory(derived.harness),
          derived,
          selection: NOTHING,
          pointed: null,
          documentKey: get().documentKey + 1,
        });
      },
      undo: () => show(undo(get().history)),
      redo: () => show(redo(get().history)),
      closeStep: () => set({ history: closeStep(get().history) }),
      select: (selection) => set({ selection: { ...NOTHING, ...selection } }),
      point: (pointed) => set({ pointed }),
      say: (text, tone = "said") => set({ notice: { tone, text, at: Date.now() } }),
      set: (changes) => set(changes),
    };
  });
}

export type Editor = ReturnType<typeof createEditor>;

function stillThere(selection: Selection, harness: Harness): Selection {
  const parts = [...selection.parts].filter((id) => id in harness.parts);
  const wires = [...selection.wires].filter((id) => id in harness.wires);
  const contact = selection.contact && selection.contact.part in harness.parts ? selection.contact : null;
  if (
    parts.length === selection.parts.size &&
    wires.length === selection.wires.size &&
    contact === selection.contact
  ) {
    return selection;
  }
  return { parts: new Set(parts), wires: new Set(wires), contact };
}
