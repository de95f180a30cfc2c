import type { Readings } from "../../electrical/operate/readings.ts";
import type { PlacedWire, Scene } from "../../layout/scene.ts";
import { resolveInk } from "../../sheets/writers/palette.ts";
import { FAMILY } from "../../sheets/writers/typeface.ts";
import { CarriedCanvas } from "../canvas/carried-canvas.ts";
import { type Box, wiresIn } from "../canvas/hit-model.ts";
import type { Lifted } from "../canvas/trace-model.ts";
import { NEAR } from "../canvas/view-model.ts";
import type { PaintTheme } from "../canvas/wire-painter.ts";
import {
  BREAK,
  type ContactFigure,
  contactFigures,
  FIGURE_SIZE,
  farFigures,
  scaleAt,
  VOLTS_SIZE,
  type WireFigure,
  wireFigures,
} from "./figures-model.ts";
import { type Band, bandOf } from "./ink-model.ts";
import type { Overlay } from "./readings-store.ts";
import { type StateTag, stateTags } from "./tags-model.ts";

/** Everything that the two layers of readings are painted from. */
export type Picture = {
  readonly scene: Scene;
  readonly readings: Readings;
  readonly overlay: Overlay;
  readonly theme: PaintTheme;
  /** The circuit that is traced; the rest steps back. */
  readonly lifted: Lifted | null;
};

/** How much is left of what is not of the traced circuit. */
const STEPPED_BACK = 0.18;
/** Of its size on the page a band keeps this much, however far away the drawing is. */
const LEAST_OF_WIDTH = 0.55;

abstract class PicturePainter extends CarriedCanvas {
  protected picture: Picture | null = null;

  show(picture: Picture): void {
    this.picture = picture;
    this.refresh();
  }

  protected ready(): boolean {
    return this.picture !== null;
  }
}

function trace(brush: CanvasRenderingContext2D, path: PlacedWire["path"]): void {
  brush.moveTo(path[0]!, path[1]!);
  for (let i = 2; i + 1 < path.length; i += 2) brush.lineTo(path[i]!, path[i + 1]!);
}

/** Under the wires: a band behind each, as wide as its current, its load or its drop. */
export class BandPainter extends PicturePainter {
  protected draw(brush: CanvasRenderingContext2D, box: Box, zoom: number): void {
    const { picture } = this;
    if (!picture || picture.overlay === "volts") return;
    const { scene, readings, overlay, theme, lifted } = picture;
    const { nominal_V } = readings.solved.built;
    const groups = new Map<string, { band: Band; back: boolean; paths: PlacedWire["path"][] }>();
    for (const { wire, path } of wiresIn(scene, box)) {
      const reading = readings.wires.get(wire.id);
      const band = reading && bandOf(overlay, reading, nominal_V);
      if (!band) continue;
      const back = lifted !== null && !lifted.wires.has(wire.id);
      const key = `${band.ink} ${band.width} ${back}`;
      const group = groups.get(key);
      if (group) group.paths.push(path);
      else groups.set(key, { band, back, paths: [path] });
    }
    brush.lineJoin = "round";
    brush.lineCap = "butt";
    for (const { band, back, paths } of groups.values()) {
      brush.globalAlpha = band.opacity * (back ? STEPPED_BACK : 1);
      brush.strokeStyle = resolveInk(band.ink, theme) ?? "transparent";
      brush.lineWidth = Math.max(band.width, (band.width * LEAST_OF_WIDTH) / zoom);
      const stretch = Math.max(1, LEAST_OF_WIDTH / zoom);
      brush.setLineDash(band.dash.map((length) => length * stretch));
      // One by one: where two bands cross, the paper would otherwise be tinted once only.
      for (const path of paths) {
        brush.beginPath();
        trace(brush, path);
        brush.stroke();
      }
    }
    brush.globalAlpha = 1;
    brush.setLineDash([]);
  }
}

/** Over the wires: figures in breaks and beside contacts, and how parts stand. */
export class FigurePainter extends PicturePainter {
  private figures: readonly WireFigure[] = [];
  private volts: readonly ContactFigure[] = [];
  private tags: readonly StateTag[] = [];
  private far: { readonly scale: number; readonly figures: readonly WireFigure[] } | null = null;
  private of: Pick<Picture, "scene" | "readings" | "overlay"> | null = null;

  override show(picture: Picture): void {
    const { of } = this;
    const { scene, readings, overlay } = picture;
    if (of?.scene !== scene || of.readings !== readings || of.overlay !== overlay) {
      this.of = picture;
      this.far = null;
      this.figures = wireFigures(scene, readings, overlay);
      this.volts = overlay === "volts" ? contactFigures(scene, readings) : [];
      this.tags = stateTags(scene, readings);
    }
    super.show(picture);
  }

  protected draw(brush: CanvasRenderingContext2D, box: Box, zoom: number): void {
    const { picture } = this;
    if (!picture) return;
    const near = zoom >= NEAR;
    const figures = near ? this.figures : this.figuresFrom(zoom);
    const { theme, lifted } = picture;
    const ink = resolveInk("ink", theme) ?? "";
    const paper = resolveInk("paper", theme) ?? "";
    const quiet = resolveInk("quiet", theme) ?? "";
    brush.fontKerning = "none";
    brush.textBaseline = "alphabetic";
    const seen = ({ x, y }: { readonly x: number; readonly y: number }) =>
      x >= box.x - 80 && y >= box.y - 80 && x <= box.x + box.width + 80 && y <= box.y + box.height + 80;
    for (const figure of figures) {
      if (!seen(figure)) continue;
      brush.globalAlpha = lifted && !lifted.wires.has(figure.wire) ? STEPPED_BACK : 1;
      drawFigure(brush, figure, ink, paper);
    }
    brush.globalAlpha = 1;
    if (!near) return;
    for (const figure of this.volts) {
      if (!seen(figure)) continue;
      brush.globalAlpha = lifted && !lifted.parts.has(figure.part) ? STEPPED_BACK : 1;
      drawVolts(brush, figure, figure.standing === "volts" ? ink : quiet);
    }
    brush.globalAlpha = lifted ? STEPPED_BACK : 1;
    for (const tag of this.tags) if (seen(tag)) drawTag(brush, tag, tag.on ? ink : quiet);
    brush.globalAlpha = 1;
  }

  private figuresFrom(zoom: number): readonly WireFigure[] {
    if (!this.picture || zoom < FARTHEST) return [];
    const scale = scaleAt(zoom);
    if (this.far?.scale !== scale) {
      const { scene, readings, overlay } = this.picture;
      this.far = { scale, figures: farFigures(scene, readings, overlay, scale) };
    }
    return this.far.figures;
  }
}

/** Below this zoom a figure has room in hardly any wire. */
const FARTHEST = 0.12;
const PAD = 3;
const HEAD = 3.2;

function drawFigure(brush: CanvasRenderingContext2D, figure: WireFigure, ink: string, paper: string): void {
  const { text, x, y, upright, over, flow, strong, scale } = figure;
  const length = figure.length / scale;
  brush.save();
  brush.translate(x, y);
  brush.scale(scale, scale);
  if (upright) brush.rotate(-Math.PI / 2);
  if (!over) {
    brush.fillStyle = paper;
    brush.fillRect(-length / 2, -BREAK / 2, length, BREAK);
  }
  brush.fillStyle = ink;
  brush.font = `${strong ? 700 : 400} ${FIGURE_SIZE}px "${FAMILY}", sans-serif`;
  // Turned upwards, what flows down flows backwards.
  const way = upright ? -flow : flow;
  brush.textAlign = way > 0 ? "left" : way < 0 ? "right" : "center";
  brush.fillText(text, way > 0 ? -length / 2 + PAD : way < 0 ? length / 2 - PAD : 0, FIGURE_SIZE * 0.33);
  if (way !== 0) {
    const tip = way * (length / 2 - 1.5);
    brush.beginPath();
    brush.moveTo(tip, 0);
    brush.lineTo(tip - way * HEAD * 2, -HEAD);
    brush.lineTo(tip - way * HEAD * 2, HEAD);
    brush.closePath();
    brush.fill();
  }
  brush.restore();
}

/** A volt or "floats"; an open ring tells what floats from what stands at nothing. */
function drawVolts(brush: CanvasRenderingContext2D, figure: ContactFigure, ink: string): void {
  const { x, y, text, align, standing } = figure;
  brush.font = `400 ${VOLTS_SIZE}px "${FAMILY}", sans-serif`;
  brush.textAlign = align === "end" ? "right" : "left";
  brush.fillStyle = ink;
  const sign = align === "end" ? -1 : 1;
  if (standing === "floating") {
    brush.beginPath();
    brush.arc(x + sign * 3, y - 3.6, 2.6, 0, 2 * Math.PI);
    brush.strokeStyle = ink;
    brush.lineWidth = 1.2;
    brush.setLineDash([]);
    brush.stroke();
  }
  brush.fillText(text, x + (standing === "floating" ? sign * 9 : 0), y);
}

function drawTag(brush: CanvasRenderingContext2D, tag: StateTag, ink: string): void {
  const { x, y, word, on, align } = tag;
  brush.font = `400 ${VOLTS_SIZE}px "${FAMILY}", sans-serif`;
  brush.textAlign = "left";
  brush.fillStyle = ink;
  const dot = align === "start" ? x + 4 : x - brush.measureText(word).width - 7;
  brush.fillText(word, dot + 7, y);
  brush.beginPath();
  brush.arc(dot, y - 3.6, 3.2, 0, 2 * Math.PI);
  if (on) brush.fill();
  else {
    brush.strokeStyle = ink;
    brush.lineWidth = 1.2;
    brush.setLineDash([]);
    brush.stroke();
  }
}
