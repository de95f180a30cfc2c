import type { Box } from "./hit-model.ts";
import { holds, type Size, seenBox, type View } from "./view-model.ts";

/** Painted past each edge of what is seen, CSS pixels: so far the drawing can be panned without painting. */
const BEYOND = 256;

/**
 * One canvas that lies in the drawing and is carried along when it is panned. It is painted again only when the view
 * leaves what was painted, zooms, or what it shows is another.
 */
export abstract class CarriedCanvas {
  private view: View = { x: 0, y: 0, zoom: 1 };
  private page: Size = { width: 0, height: 0 };
  private painted: { box: Box; zoom: number } | null = null;
  private frame = 0;

  constructor(private readonly canvas: HTMLCanvasElement) {}

  look(view: View, page: Size): void {
    this.view = view;
    this.page = page;
    const seen = seenBox(view, page);
    if (this.painted?.zoom === view.zoom && holds(this.painted.box, seen)) return;
    this.soon();
  }

  /** Paints at once what is due, so that parts and wires move in one frame. */
  flush(): void {
    if (this.frame) cancelAnimationFrame(this.frame);
    this.frame = 0;
    this.paint();
  }

  /** Everything again: the typeface has arrived, or what is shown has changed. */
  refresh(): void {
    this.painted = null;
    this.soon();
  }

  stop(): void {
    if (this.frame) cancelAnimationFrame(this.frame);
    this.frame = 0;
  }

  /** Whether there is anything to paint. */
  protected abstract ready(): boolean;

  /** Paints what lies in a box of the drawing; the brush's units are the drawing's. */
  protected abstract draw(brush: CanvasRenderingContext2D, box: Box, zoom: number): void;

  private soon(): void {
    if (!this.frame) this.frame = requestAnimationFrame(() => this.flush());
  }

  private paint(): void {
    const { view, page, canvas } = this;
    const brush = canvas.getContext("2d");
    if (!this.ready() || !brush || page.width === 0) return;
    const dots = Math.min(3, window.devicePixelRatio || 1);
    // Whole pixels from the page's corner: the picture stays sharp while it is carried along.
    const left = -BEYOND;
    const top = -BEYOND;
    const width = page.width + 2 * BEYOND;
    const height = page.height + 2 * BEYOND;
    const box: Box = {
      x: (left - view.x) / view.zoom,
      y: (top - view.y) / view.zoom,
      width: width / view.zoom,
      height: height / view.zoom,
    };
    const [across, down] = [Math.round(width * dots), Math.round(height * dots)];
    if (canvas.width !== across || canvas.height !== down) {
      canvas.width = across;
      canvas.height = down;
    } else {
      brush.setTransform(1, 0, 0, 1, 0, 0);
      brush.clearRect(0, 0, across, down);
    }
    canvas.style.width = `${box.width}px`;
    canvas.style.height = `${box.height}px`;
    canvas.style.transform = `translate(${box.x}px, ${box.y}px)`;
    const scale = view.zoom * dots;
    brush.setTransform(scale, 0, 0, scale, -box.x * scale, -box.y * scale);
    this.draw(brush, box, view.zoom);
    this.painted = { box, zoom: view.zoom };
  }
}
