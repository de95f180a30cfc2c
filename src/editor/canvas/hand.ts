import type { ContactRef, Harness } from "../../graph/harness.ts";
import type { Editor, Pointed } from "../state/store.ts";
import { type CanvasStore, canvasOf, type Spot } from "./canvas-store.ts";
import { fieldAt } from "./fields-model.ts";
import { boxOf, type Hit, heldBy, hitAt } from "./hit-model.ts";
import type { Source } from "./join-model.ts";
import { LeadPull, startsAt } from "./lead-pull.ts";
import { PartDrag } from "./part-drag.ts";
import { clicked } from "./select-model.ts";
import type { Sight } from "./sight.ts";

/** A press moves this far, page pixels, before it is a drag. */
const DRAG_FROM = { mouse: 4, touch: 9 } as const;
const LONG_PRESS_MS = 500;
/** How far off a thing may be pointed at, page pixels: a finger covers 44. */
const REACH = { mouse: 7, touch: 22 } as const;

type Press = {
  readonly pointer: number;
  readonly kind: "mouse" | "touch";
  readonly hit: Hit;
  readonly screen: Spot;
  readonly spot: Spot;
  readonly shift: boolean;
  /** React Flow pans with this press; we only look whether it was a tap. */
  readonly pans: boolean;
  drag: PartDrag | "lead" | "box" | null;
};

const hands = new WeakMap<Editor, Hand>();

/** The hand on an editor's mounted canvas. */
export function handOf(editor: Editor): Hand | undefined {
  return hands.get(editor);
}

/** Reads the pointer: what a press, a drag, a tap or a long press on the canvas means. */
export class Hand {
  readonly lead: LeadPull;
  spaceHeld = false;
  private press: Press | null = null;
  private longPress = 0;
  private edgeFrame = 0;
  private dragAt: Spot | null = null;
  private hoverFrame = 0;
  private hoverAt: Spot | null = null;
  private readonly canvas: CanvasStore;

  constructor(
    private readonly editor: Editor,
    private readonly sight: Sight,
  ) {
    this.canvas = canvasOf(editor);
    this.lead = new LeadPull(editor, this.canvas);
    hands.set(editor, this);
  }

  private get harness(): Harness {
    return this.editor.getState().history.present;
  }

  private hit(spot: Spot, kind: Press["kind"]): Hit {
    return hitAt(this.editor.getState().derived.scene, spot.x, spot.y, REACH[kind] / this.sight.view.zoom);
  }

  /** @returns true where the press is ours; false where React Flow may pan with it. */
  down(event: PointerEvent): boolean {
    const kind = event.pointerType === "mouse" || event.pointerType === "pen" ? "mouse" : "touch";
    if (this.press) {
      // A second finger: two of them zoom, whatever the first one had begun.
      this.cancel();
      return false;
    }
    if (event.button !== 0 || this.spaceHeld) return false;
    const screen = { x: event.clientX, y: event.clientY };
    const spot = this.sight.toDrawing(screen);
    const hit = this.hit(spot, kind);
    const pans = !this.claims(hit, kind, event.shiftKey);
    this.press = {
      pointer: event.pointerId,
      kind,
      hit,
      screen,
      spot,
      shift: event.shiftKey,
      pans,
      drag: null,
    };
    if (kind === "touch") {
      this.longPress = window.setTimeout(() => {
        this.cancel();
        this.openMenu(screen, hit);
      }, LONG_PRESS_MS);
    }
    return !pans;
  }

  /** A finger pans from anywhere but from what is selected already; a mouse pans from the ground. */
  private claims(hit: Hit, kind: Press["kind"], shift: boolean): boolean {
    if (kind === "mouse") {
      if (hit.kind === "nothing" || hit.kind === "wire") return shift;
      return true;
    }
    const { selection } = this.editor.getState();
    if (hit.kind === "part") return selection.parts.has(hit.part);
    if (hit.kind === "contact") return selection.contact !== null && selection.contact.part === hit.ref.part;
    return hit.kind === "loose" && selection.wires.has(hit.wire);
  }

  move(event: PointerEvent): void {
    const { press } = this;
    const screen = { x: event.clientX, y: event.clientY };
    if (!press) {
      if (event.pointerType === "mouse" && this.sight.root?.contains(event.target as Node))
        this.hover(screen);
      return;
    }
    if (event.pointerId !== press.pointer) return;
    const far = Math.hypot(screen.x - press.screen.x, screen.y - press.screen.y);
    if (!press.drag) {
      if (far < DRAG_FROM[press.kind]) return;
      clearTimeout(this.longPress);
      if (press.pans) {
        this.press = null;
        return;
      }
      this.begin(press);
    }
    this.drag(press, screen, event.altKey);
    if (!this.edgeFrame) this.edgeFrame = requestAnimationFrame(() => this.pull(screen, event.altKey));
  }

  private drag(press: Press, screen: Spot, free: boolean): void {
    this.dragAt = screen;
    const spot = this.sight.toDrawing(screen);
    if (press.drag === "lead") this.lead.follow(spot, this.hit(spot, press.kind));
    else if (press.drag === "box") {
      this.canvas.setState({ box: boxOf(press.spot.x, press.spot.y, spot.x, spot.y) });
    } else press.drag?.to(spot.x - press.spot.x, spot.y - press.spot.y, free);
  }

  /** A drag held near the edge moves the drawing along, frame by frame, until it leaves the edge or ends. */
  private pull(screen: Spot, free: boolean): void {
    this.edgeFrame = 0;
    const { press } = this;
    const at = this.dragAt ?? screen;
    if (!press?.drag || !this.sight.pullAt(at)) return;
    this.drag(press, at, free);
    this.edgeFrame = requestAnimationFrame(() => this.pull(at, free));
  }

  private begin(press: Press): void {
    const { hit } = press;
    const source = sourceOf(this.harness, hit);
    if (source) {
      press.drag = "lead";
      this.lead.begin(source, true);
    } else if (hit.kind === "part" && !press.shift) {
      const { selection, select, point } = this.editor.getState();
      if (!selection.parts.has(hit.part)) select({ parts: new Set([hit.part]) });
      point(null);
      const moving = this.editor.getState().selection.parts;
      press.drag = new PartDrag(this.editor, this.canvas, hit.part, moving);
    } else press.drag = "box";
  }

  up(event: PointerEvent): void {
    const { press } = this;
    if (!press || event.pointerId !== press.pointer) return;
    clearTimeout(this.longPress);
    this.press = null;
    const screen = { x: event.clientX, y: event.clientY };
    const spot = this.sight.toDrawing(screen);
    if (press.drag === "lead") this.lead.letGo(spot, this.hit(spot, press.kind), screen);
    else if (press.drag === "box") this.takeBox(press.shift);
    else if (press.drag) press.drag.drop();
    else this.choose(press.hit, press.shift, screen, spot);
  }

  private takeBox(add: boolean): void {
    const { box } = this.canvas.getState();
    this.canvas.setState({ box: null });
    if (!box) return;
    const { derived, selection, select } = this.editor.getState();
    const held = heldBy(derived.scene, box);
    const kept = add ? selection : { parts: [], wires: [] };
    select({
      parts: new Set([...kept.parts, ...held.parts]),
      wires: new Set([...kept.wires, ...held.wires]),
    });
  }

  /** A click or a tap: it ends the lead being drawn, or else selects; on a contact it begins a lead as well. */
  choose(hit: Hit, add = false, screen: Spot = { x: 0, y: 0 }, spot: Spot = screen): void {
    const { rubber } = this.lead;
    if (rubber && !rubber.held) {
      const same = hit.kind === "contact" && startsAt(rubber.from, hit.ref);
      if (same || hit.kind === "nothing" || hit.kind === "part") this.lead.stop();
      else {
        this.lead.letGo(spot, hit, screen);
        return;
      }
      if (same) return;
    }
    const { selection, select } = this.editor.getState();
    select(clicked(selection, hit, add));
    const source = add ? null : sourceOf(this.harness, hit);
    if (source) this.lead.begin(source, false);
  }

  edit(event: MouseEvent): void {
    const spot = this.sight.toDrawing({ x: event.clientX, y: event.clientY });
    const { scene } = this.editor.getState().derived;
    const hit = this.hit(spot, "mouse");
    const on =
      hit.kind === "contact"
        ? hit.ref.part
        : hit.kind === "part"
          ? hit.part
          : hit.kind === "wire" || hit.kind === "loose"
            ? hit.wire
            : null;
    const field = on && fieldAt(scene, spot.x, spot.y, on);
    if (field) this.canvas.setState({ field, rubber: null });
  }

  openMenu(screen: Spot, hit: Hit = this.hit(this.sight.toDrawing(screen), "mouse")): void {
    const { selection, select } = this.editor.getState();
    const held =
      (hit.kind === "part" && selection.parts.has(hit.part)) ||
      (hit.kind === "wire" && selection.wires.has(hit.wire));
    if (!held) select(clicked(selection, hit, false));
    this.canvas.setState({ menu: { screen, spot: this.sight.toDrawing(screen) }, rubber: null });
  }

  hover(screen: Spot): void {
    this.hoverAt = screen;
    if (this.hoverFrame) return;
    this.hoverFrame = requestAnimationFrame(() => {
      this.hoverFrame = 0;
      if (this.hoverAt) this.hoverNow(this.sight.toDrawing(this.hoverAt));
    });
  }

  private hoverNow(spot: Spot): void {
    const hit = this.hit(spot, "mouse");
    const { root } = this.sight;
    if (root && root.dataset.over !== hit.kind) root.dataset.over = hit.kind;
    if (this.lead.rubber) this.lead.follow(spot, hit);
    const { pointed, point } = this.editor.getState();
    const next: Pointed =
      hit.kind === "contact"
        ? hit.ref
        : hit.kind === "wire" || hit.kind === "loose"
          ? { wire: hit.wire }
          : null;
    if (!samePointed(pointed, next)) point(next);
  }

  leave(): void {
    this.hoverAt = null;
    if (this.editor.getState().pointed && !this.press) this.editor.getState().point(null);
  }

  /** Gives up whatever is under way. @returns whether there was anything */
  cancel(): boolean {
    clearTimeout(this.longPress);
    const { press } = this;
    this.press = null;
    if (press?.drag instanceof PartDrag) press.drag.cancel();
    const { rubber, box } = this.canvas.getState();
    if (rubber) this.lead.stop();
    if (box) this.canvas.setState({ box: null });
    return Boolean(press?.drag || rubber || box);
  }
}

function sourceOf(harness: Harness, hit: Hit): Source | null {
  if (hit.kind === "contact") return { contact: hit.ref };
  if (hit.kind !== "loose") return null;
  const open = harness.wires[hit.wire]?.ends.indexOf("loose");
  return open === 0 || open === 1 ? { wire: hit.wire, open } : null;
}

function samePointed(a: Pointed, b: Pointed): boolean {
  if (!a || !b) return a === b;
  if ("wire" in a) return "wire" in b && a.wire === b.wire;
  return !("wire" in b) && sameRef(a, b);
}

function sameRef(a: ContactRef, b: ContactRef): boolean {
  return a.part === b.part && a.contact === b.contact;
}
