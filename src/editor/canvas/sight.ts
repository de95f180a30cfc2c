import type { ReactFlowInstance } from "reactflow";
import type { Scene } from "../../layout/scene.ts";
import type { CanvasStore, CanvasView, Spot } from "./canvas-store.ts";
import type { Box } from "./hit-model.ts";
import type { PartNodeType } from "./nodes-model.ts";
import {
  CONTACTS_FROM,
  edgePull,
  holds,
  NEAR,
  reveal,
  type Size,
  seenBox,
  type View,
  viewOf,
  zoomedAt,
} from "./view-model.ts";

type Listener = (view: View, page: Size) => void;

const GLIDE_MS = 200;
/** A part nearer than this to the edge, page pixels, is not seen well: its findings stand beside it. */
const BORDER = 24;

/** True where a person has asked their system for less motion. */
export function wantsStill(): boolean {
  return window.matchMedia("(prefers-reduced-motion: reduce)").matches;
}

/**
 * The view of one mounted canvas. It listens to React Flow, which pans and zooms, and tells the layers of ours
 * without passing through React: a frame of panning renders nothing.
 */
export class Sight implements CanvasView {
  view: View = { x: 0, y: 0, zoom: 1 };
  page: Size = { width: 0, height: 0 };
  private readonly listeners = new Set<Listener>();
  private waiting: (() => void) | null = null;
  private flow: ReactFlowInstance<PartNodeType> | null = null;
  root: HTMLElement | null = null;
  private styled = 0;

  constructor(
    private readonly canvas: CanvasStore,
    private readonly scene: () => Scene,
  ) {}

  attach(flow: ReactFlowInstance<PartNodeType>): void {
    this.flow = flow;
    this.moved(flow.getViewport());
    this.waiting?.();
  }

  detach(): void {
    this.flow = null;
  }

  /** A page of another size keeps the whole drawing in sight, if it was. */
  resize(page: Size): void {
    const whole = this.page.width > 0 && this.seesAll(this.scene());
    this.page = page;
    if (page.width > 0) this.waiting?.();
    if (whole && page.width > 0 && !this.seesAll(this.scene())) this.fit();
    this.tell();
  }

  /** What was added to a drawing that stood in sight as a whole is brought into sight with it. */
  grown(before: Scene, after: Scene): void {
    if (after.parts.size <= before.parts.size || this.page.width === 0) return;
    if (this.seesAll(before) && !this.seesAll(after, BORDER)) this.fit(true);
  }

  /** Whether every part and wire is within the page. */
  seesAll({ bounds }: Scene, border = 0): boolean {
    const { x, y, width, height } = seenBox(this.view, this.page);
    const margin = border / this.view.zoom;
    return (
      bounds.width === 0 ||
      holds({ x: x + margin, y: y + margin, width: width - 2 * margin, height: height - 2 * margin }, bounds)
    );
  }

  moved(view: View): void {
    this.view = view;
    this.tell();
  }

  listen(listener: Listener): () => void {
    this.listeners.add(listener);
    listener(this.view, this.page);
    return () => this.listeners.delete(listener);
  }

  private tell(): void {
    const { view, page, canvas } = this;
    if (this.root && view.zoom !== this.styled) {
      this.styled = view.zoom;
      this.root.style.setProperty("--zoom", String(view.zoom));
    }
    const state = canvas.getState();
    const far = view.zoom < NEAR;
    const contacts = view.zoom >= CONTACTS_FROM;
    const seen = seenBox(view, page);
    const zoomedOut = state.region.width > 4 * seen.width;
    if (far !== state.far || contacts !== state.contacts || zoomedOut || !holds(state.region, seen)) {
      const { x, y, width, height } = seen;
      canvas.setState({
        far,
        contacts,
        region: { x: x - width / 2, y: y - height / 2, width: 2 * width, height: 2 * height },
      });
    }
    for (const listener of this.listeners) listener(view, page);
  }

  private go(view: View, glide: boolean): void {
    if (!this.flow || this.page.width === 0) {
      this.waiting = () => {
        if (!this.flow || this.page.width === 0) return;
        this.waiting = null;
        this.fit();
      };
      return;
    }
    void this.flow.setViewport(view, glide && !wantsStill() ? { duration: GLIDE_MS } : {});
  }

  fit(glide = false): void {
    const { bounds } = this.scene();
    this.go(bounds.width === 0 ? { x: 0, y: 0, zoom: 1 } : viewOf(bounds, this.page), glide);
  }

  show(box: Box): void {
    this.go(viewOf(box, this.page, 1, 80), true);
  }

  /** Brings a box into sight with the least movement. */
  reveal(box: Box): void {
    const view = reveal(this.view, this.page, box);
    if (view !== this.view) this.go(view, true);
  }

  zoomBy(factor: number): void {
    this.go(zoomedAt(this.view, factor, { x: this.page.width / 2, y: this.page.height / 2 }), true);
  }

  zoomTo(zoom: number): void {
    this.zoomBy(zoom / this.view.zoom);
  }

  /** Puts a spot of the drawing in the middle, at the present zoom. */
  centreOn(spot: Spot): void {
    const { zoom } = this.view;
    this.go(
      {
        zoom,
        x: Math.round(this.page.width / 2 - spot.x * zoom),
        y: Math.round(this.page.height / 2 - spot.y * zoom),
      },
      false,
    );
  }

  /** Shifts the view where a drag at this point of the page is near the edge. @returns whether it did */
  pullAt(screen: Spot): boolean {
    const corner = this.root?.getBoundingClientRect();
    const at = { x: screen.x - (corner?.left ?? 0), y: screen.y - (corner?.top ?? 0) };
    const pull = edgePull(at, this.page);
    if (pull.x === 0 && pull.y === 0) return false;
    this.go({ ...this.view, x: this.view.x + pull.x, y: this.view.y + pull.y }, false);
    return true;
  }

  centre(): Spot {
    const { x, y, width, height } = seenBox(this.view, this.page);
    return { x: x + width / 2, y: y + height / 2 };
  }

  /** From the page's own coordinates, as an event gives them. */
  toDrawing(screen: Spot): Spot {
    const corner = this.root?.getBoundingClientRect();
    const { x, y, zoom } = this.view;
    return { x: (screen.x - (corner?.left ?? 0) - x) / zoom, y: (screen.y - (corner?.top ?? 0) - y) / zoom };
  }

  /** To the canvas's own corner, for what is put over the drawing. */
  toScreen(spot: Spot): Spot {
    const { x, y, zoom } = this.view;
    return { x: spot.x * zoom + x, y: spot.y * zoom + y };
  }

  focus(): void {
    this.root?.focus({ preventScroll: true });
  }

  glide(): void {
    const { root } = this;
    if (!root || wantsStill()) return;
    root.classList.add("gliding");
    setTimeout(() => root.classList.remove("gliding"), GLIDE_MS);
  }
}
