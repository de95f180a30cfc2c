import { createStore, type StoreApi } from "zustand/vanilla";
import type { ContactRef, WireId } from "../../graph/harness.ts";
import type { Scene } from "../../layout/scene.ts";
import type { Editor } from "../state/store.ts";
import type { Field } from "./fields-model.ts";
import type { Box } from "./hit-model.ts";
import type { Source } from "./join-model.ts";
import type { Lifted } from "./trace-model.ts";

export type Spot = { readonly x: number; readonly y: number };

/** A lead being drawn: where it starts, where its free end is, and what letting go would do. */
export type Rubber = {
  readonly from: Source;
  readonly start: Spot;
  readonly end: Spot;
  /** The contact or wire that would take it. */
  readonly target: ContactRef | { readonly wire: WireId } | null;
  readonly words: string;
  /** Follows a finger or a button held down; otherwise it was begun by a click, a tap or a key. */
  readonly held: boolean;
};

/** Asks what a lead let go on empty ground is to end in. */
export type Choosing = { readonly from: Source; readonly spot: Spot; readonly screen: Spot };

export type OpenMenu = {
  readonly screen: Spot;
  /** The spot on the drawing it was opened at: parts added from the menu go there. */
  readonly spot: Spot;
};

export type Arranging = {
  readonly since: number;
  /** Shown only after a moment: most arrangements are done before anybody could read it. */
  readonly shown: boolean;
  readonly cancel: () => void;
};

/** Wires without current and volts, and among them those that hang in the air. */
export type Faded = { readonly wires: ReadonlySet<WireId>; readonly floating: ReadonlySet<WireId> };

export type CanvasState = {
  /** The scene under a drag; `null` when the harness itself is shown. */
  readonly draft: Scene | null;
  /** The wires that the drag takes along: they are drawn apart from those that stay. */
  readonly taken: ReadonlySet<WireId>;
  readonly rubber: Rubber | null;
  readonly box: Box | null;
  /** Rows that a dragged part lines up with: x1, x2, y. */
  readonly guides: readonly (readonly [number, number, number])[];
  readonly choosing: Choosing | null;
  readonly menu: OpenMenu | null;
  readonly field: Field | null;
  readonly arranging: Arranging | null;
  /** What stands out while its circuit is traced. */
  readonly lifted: Lifted | null;
  /** Wires that step back, since they carry nothing and stand at nothing; `null` while readings are off. */
  readonly faded: Faded | null;
  /** So far away that no text can be read. */
  readonly far: boolean;
  /** Near enough to point at a contact. */
  readonly contacts: boolean;
  /** The piece of the drawing for which marks and names are kept: what is seen, and something round it. */
  readonly region: Box;
  /** What is said of the last move of the keyboard, for a screen reader. */
  readonly said: string;
};

/** What the mounted canvas lets others do with its view. Before it is mounted there is none. */
export type CanvasView = {
  fit(glide?: boolean): void;
  /** Shows a box of the drawing, no closer than life-size. */
  show(box: Box): void;
  /** Brings a box into sight with the least movement. */
  reveal(box: Box): void;
  zoomTo(zoom: number): void;
  centreOn(spot: Spot): void;
  zoomBy(factor: number): void;
  centre(): Spot;
  toDrawing(screen: Spot): Spot;
  toScreen(spot: Spot): Spot;
  focus(): void;
  /** Lets parts glide to their new places, where motion is welcome. */
  glide(): void;
};

export type CanvasStore = StoreApi<CanvasState> & { view: CanvasView | null };

export const NOTHING_TAKEN: ReadonlySet<WireId> = new Set();

export const IDLE: CanvasState = {
  draft: null,
  taken: NOTHING_TAKEN,
  rubber: null,
  box: null,
  guides: [],
  choosing: null,
  menu: null,
  field: null,
  arranging: null,
  lifted: null,
  faded: null,
  far: false,
  contacts: true,
  region: { x: 0, y: 0, width: 0, height: 0 },
  said: "",
};

const stores = new WeakMap<Editor, CanvasStore>();

/** The canvas's own state beside an editor's: what is under way, and never saved. */
export function canvasOf(editor: Editor): CanvasStore {
  const known = stores.get(editor);
  if (known) return known;
  const made: CanvasStore = Object.assign(
    createStore<CanvasState>()(() => IDLE),
    { view: null },
  );
  stores.set(editor, made);
  return made;
}
