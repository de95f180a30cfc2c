import { createStore } from "zustand/vanilla";
import type { Edit } from "../../graph/edits/edit.ts";
import type { ContactRef, Harness, PartId, WireId } from "../../graph/harness.ts";
import { closeStep, edit, type History, record, redo, startHistory, undo } from "../../graph/history.ts";
import { emptyHarness } from "../../graph/make.ts";
import type { Finding } from "../../rules/rule.ts";
import type { Book } from "./book.ts";
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
  /** The rule book, once it has been fetched. */
  readonly book: Book | null;
  readonly selection: Selection;
  readonly pointed: Pointed;
  readonly notice: Notice | null;
  readonly preview: Preview | null;
  /** The key of the finding of which a person has asked why. */
  readonly why: string | null;
  readonly theme: Theme;
  readonly panel: Panel;
  readonly wireTable: boolean;
  /** Changes with every other document that is opened: the canvas then shows the whole of it. */
  readonly documentKey: number;
};

/** A cure that is shown on the drawing before it is taken. */
export type Preview = {
  readonly label: string;
  /** What the harness was, to be put back. */
  readonly before: History;
  /** The finding that it is for. */
  readonly finding: string;
  /** What was found without it. */
  readonly was: readonly Finding[];
  /** What it makes or changes. */
  readonly marked: Marked;
};

/** Parts and wires that are marked on the drawing, apart from what is selected. */
export type Marked = { readonly parts: ReadonlySet<PartId>; readonly wires: ReadonlySet<WireId> };

export const NOTHING: Selection = { parts: new Set(), wires: new Set(), contact: null };

export type EditorActions = {
  /** Applies an edit as one step; a refusal is said to the person. Returns whether it was made. */
  dispatch(change: Edit | { readonly ok: false; readonly why: string }, mergeKey?: string): boolean;
  /** Shows a cure on the drawing; nothing is kept of it until it is taken. */
  lookAt(finding: string, label: string, change: Edit): void;
  /** Ends the preview: the cure stays as one step, or all is as it was. */
  endPreview(take: boolean): void;
  askWhy(finding: string | null): void;
  /** Takes a harness made elsewhere (an arrangement) as one step under a name. */
  take(name: string, harness: Harness): void;
  /** Takes places that were found for a harness just opened: nothing that anybody would undo. */
  adopt(harness: Harness): void;
  /** Takes the rule book that has been fetched, and checks what is open by it. */
  takeBook(book: Book): void;
  /** Puts the findings back into the check's own order: what hurts most first. */
  sortFindings(): void;
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
export function createEditor(harness: Harness = emptyHarness(), book: Book | null = null) {
  const first = settle(harness, null, book);
  return createStore<EditorState & EditorActions>()((set, get) => {
    const show = (history: History): void => {
      const derived = settle(history.present, get().derived, get().book);
      const { why } = get();
      set({
        // The way of a finding that is gone shows nothing any more.
        why: derived.findings.some(({ key }) => key === why) ? why : null,
        history: derived.harness === history.present ? history : { ...history, present: derived.harness },
        derived,
        selection: stillThere(get().selection, derived.harness),
        pointed: null,
      });
    };
    return {
      history: startHistory(first.harness),
      derived: first,
      book,
      selection: NOTHING,
      pointed: null,
      notice: null,
      preview: null,
      why: null,
      theme: "system",
      panel: "findings",
      wireTable: false,
      documentKey: 0,
      dispatch(change, mergeKey) {
        if ("ok" in change) {
          get().say(change.why, "refused");
          return false;
        }
        if (get().preview) {
          get().say("A cure is being shown: take it or leave it first.", "refused");
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
      lookAt(finding, label, change) {
        get().endPreview(false);
        const before = get().history;
        const result = edit(closeStep(before), change);
        if (!result.ok) {
          get().say(result.why, "refused");
          return;
        }
        const marked = changedIn(before.present, result.history.present);
        set({ preview: { label, before, finding, was: get().derived.findings, marked } });
        show(result.history);
      },
      endPreview(take) {
        const { preview } = get();
        if (!preview) return;
        set({ preview: null });
        if (!take) show(preview.before);
      },
      askWhy: (why) => set({ why }),
      take: (name, next) => {
        get().endPreview(false);
        show(record(get().history, name, next));
      },
      adopt: (next) => show({ ...get().history, present: next }),
      takeBook(fetched) {
        set({ book: fetched });
        show(get().history);
      },
      sortFindings() {
        const { derived } = get();
        if (derived.checked) set({ derived: { ...derived, findings: derived.checked.findings } });
      },
      open(next) {
        const derived = settle(next, null, get().book);
        set({
          history: startHistory(derived.harness),
          derived,
          selection: NOTHING,
          pointed: null,
          preview: null,
          why: null,
          documentKey: get().documentKey + 1,
        });
      },
      undo: () => (get().preview ? get().endPreview(false) : show(undo(get().history))),
      redo: () => {
        if (!get().preview) show(redo(get().history));
      },
      closeStep: () => set({ history: closeStep(get().history) }),
      select: (selection) => set({ selection: { ...NOTHING, ...selection } }),
      point: (pointed) => set({ pointed }),
      say: (text, tone = "said") => set({ notice: { tone, text, at: Date.now() } }),
      set: (changes) => set(changes),
    };
  });
}

export type Editor = ReturnType<typeof createEditor>;

/** The document as it is kept: what is only being shown is none of it. */
export function documentOf({ history, preview }: Pick<EditorState, "history" | "preview">): Harness {
  return preview ? preview.before.present : history.present;
}

/** What stands in the second harness that is not the same in the first. */
function changedIn(before: Harness, after: Harness): Marked {
  const parts = Object.values(after.parts).filter((part) => before.parts[part.id] !== part);
  const wires = Object.values(after.wires).filter((wire) => before.wires[wire.id] !== wire);
  return { parts: new Set(parts.map(({ id }) => id)), wires: new Set(wires.map(({ id }) => id)) };
}

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
