import type { Cable, Harness, WireId } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import type { PlacedWire, Scene } from "../../layout/scene.ts";
import { drawWire, OUTLINE, wireWidth } from "../../sheets/wire-drawing.ts";
import { type Brush, paintItems } from "../../sheets/writers/canvas.ts";
import { resolveInk } from "../../sheets/writers/palette.ts";
import { type Box, wiresIn } from "./hit-model.ts";
import { holds, NEAR, type Size, seenBox, type View } from "./view-model.ts";

export type PaintTheme = "paper" | "workshop";

/** Painted past each edge of what is seen, CSS pixels: so far the drawing can be panned without painting. */
const BEYOND = 256;

/** What a wire is drawn with besides itself. */
export function wireItems(scene: Scene, harness: Harness): (placed: PlacedWire) => readonly Primitive[] {
  const cables = cablesOf(harness);
  return (placed) => {
    const cable = cables.get(placed.wire.id) ?? null;
    const other = cable?.kind.includes("pair") ? cable.wires.find((id) => id !== placed.wire.id) : undefined;
    const partner = other ? (scene.wires.get(other) ?? null) : null;
    return itemsOf(placed, cable, partner);
  };
}

const drawn = new WeakMap<
  PlacedWire,
  { cable: Cable | null; partner: PlacedWire | null; items: readonly Primitive[] }
>();

function itemsOf(placed: PlacedWire, cable: Cable | null, partner: PlacedWire | null): readonly Primitive[] {
  const known = drawn.get(placed);
  if (known && known.cable === cable && known.partner === partner) return known.items;
  const items = drawWire(placed, { cable, partner });
  drawn.set(placed, { cable, partner, items });
  return items;
}

const cableMaps = new WeakMap<Harness["cables"], ReadonlyMap<WireId, Cable>>();

function cablesOf(harness: Harness): ReadonlyMap<WireId, Cable> {
  const known = cableMaps.get(harness.cables);
  if (known) return known;
  const made = new Map(
    Object.values(harness.cables).flatMap((cable) => cable.wires.map((id): [WireId, Cable] => [id, cable])),
  );
  cableMaps.set(harness.cables, made);
  return made;
}

/**
 * Paints the wires on one canvas that lies in the drawing and is carried along when it is panned. It is painted
 * again only when the view leaves what was painted, zooms, or the scene or the theme is another: an element for
 * every wire would cost more on every frame than all of this.
 */
export class WirePainter {
  private scene: Scene | null = null;
  private harness: Harness | null = null;
  private theme: PaintTheme = "paper";
  private without: ReadonlySet<WireId> = new Set();
  private view: View = { x: 0, y: 0, zoom: 1 };
  private page: Size = { width: 0, height: 0 };
  private painted: { box: Box; zoom: number } | null = null;
  private frame = 0;

  constructor(private readonly canvas: HTMLCanvasElement) {}

  /** @param without wires that another layer draws just now */
  show(scene: Scene, harness: Harness, theme: PaintTheme, without: ReadonlySet<WireId>): void {
    const same = scene === this.scene && harness.cables === this.harness?.cables;
    if (same && theme === this.theme && without === this.without) return;
    this.without = without;
    this.scene = scene;
    this.harness = harness;
    this.theme = theme;
    this.painted = null;
    this.soon();
  }

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

  /** Everything again: the typeface has arrived. */
  refresh(): void {
    this.painted = null;
    this.soon();
  }

  stop(): void {
    if (this.frame) cancelAnimationFrame(this.frame);
    this.frame = 0;
  }

  private soon(): void {
    if (!this.frame) this.frame = requestAnimationFrame(() => this.flush());
  }

  private paint(): void {
    const { scene, harness, view, page, canvas } = this;
    const brush = canvas.getContext("2d");
    if (!scene || !harness || !brush || page.width === 0) return;
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
    const found = wiresIn(scene, box);
    const wires = this.without.size ? found.filter(({ wire }) => !this.without.has(wire.id)) : found;
    if (view.zoom >= NEAR) {
      const items = wireItems(scene, harness);
      for (const placed of wires) paintItems(brush as Brush, items(placed), { theme: this.theme });
    } else paintFar(brush, wires, view.zoom, this.theme);
    this.painted = { box, zoom: view.zoom };
  }
}

/** From afar: all outlines in one stroke, then one stroke for each colour. No text, no tracer. */
function paintFar(
  brush: CanvasRenderingContext2D,
  wires: readonly PlacedWire[],
  zoom: number,
  theme: PaintTheme,
): void {
  const least = 1.7 / zoom;
  const byColour = new Map<string, PlacedWire[]>();
  for (const placed of wires) {
    const base = placed.wire.colour?.base ?? "unknown";
    const list = byColour.get(base);
    if (list) list.push(placed);
    else byColour.set(base, [placed]);
  }
  brush.lineJoin = "round";
  brush.lineCap = "butt";
  brush.setLineDash([]);
  const stroke = (list: readonly PlacedWire[], colour: string | null, width: number) => {
    brush.beginPath();
    for (const { path } of list) {
      brush.moveTo(path[0]!, path[1]!);
      for (let i = 2; i + 1 < path.length; i += 2) brush.lineTo(path[i]!, path[i + 1]!);
    }
    brush.strokeStyle = colour ?? "transparent";
    brush.lineWidth = width;
    brush.stroke();
  };
  const width = Math.max(wireWidth(1), least);
  stroke(wires, resolveInk("ink", theme), width + Math.min(OUTLINE, 0.8 / zoom));
  for (const [base, list] of byColour) stroke(list, resolveInk(`wire:${base}`, theme), width);
}
