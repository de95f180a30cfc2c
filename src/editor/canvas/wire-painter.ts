import type { Cable, Harness, WireId } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import type { PlacedWire, Scene } from "../../layout/scene.ts";
import { drawLabel, drawWire, OUTLINE, wireWidth } from "../../sheets/wire-drawing.ts";
import { type Brush, paintItems } from "../../sheets/writers/canvas.ts";
import { resolveInk } from "../../sheets/writers/palette.ts";
import type { Faded } from "./canvas-store.ts";
import { CarriedCanvas } from "./carried-canvas.ts";
import { type Box, wiresIn } from "./hit-model.ts";
import { NEAR } from "./view-model.ts";

export type PaintTheme = "paper" | "workshop";

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

/** Paints the wires on one canvas: an element for every wire would cost more on every frame than all of this. */
export class WirePainter extends CarriedCanvas {
  private scene: Scene | null = null;
  private harness: Harness | null = null;
  private theme: PaintTheme = "paper";
  private without: ReadonlySet<WireId> = new Set();
  private faded: Faded | null = null;

  /**
   * @param without wires that another layer draws just now
   * @param faded wires that step back behind the others
   */
  show(
    scene: Scene,
    harness: Harness,
    theme: PaintTheme,
    without: ReadonlySet<WireId>,
    faded: Faded | null,
  ): void {
    const same = scene === this.scene && harness.cables === this.harness?.cables;
    if (same && theme === this.theme && without === this.without && faded === this.faded) return;
    this.without = without;
    this.faded = faded;
    this.scene = scene;
    this.harness = harness;
    this.theme = theme;
    this.refresh();
  }

  protected ready(): boolean {
    return this.scene !== null;
  }

  protected draw(brush: CanvasRenderingContext2D, box: Box, zoom: number): void {
    const { scene, harness } = this;
    if (!scene || !harness) return;
    const { without, faded } = this;
    const wires = wiresIn(scene, box).filter(({ wire }) => !without.has(wire.id));
    const paint = (list: readonly PlacedWire[]): void => {
      if (zoom >= NEAR) {
        const items = wireItems(scene, harness);
        for (const placed of list) paintItems(brush as Brush, items(placed), { theme: this.theme });
      } else paintFar(brush, list, zoom, this.theme);
    };
    if (!faded) {
      paint(wires);
      return;
    }
    const back = wires.filter(({ wire }) => faded.wires.has(wire.id));
    brush.globalAlpha = FADED;
    paint(back);
    brush.globalAlpha = 1;
    cutUp(
      brush,
      back.filter(({ wire }) => faded.floating.has(wire.id)),
      zoom,
      this.theme,
    );
    if (zoom >= NEAR) paintLabels(brush, back, this.theme);
    paint(wires.filter(({ wire }) => !faded.wires.has(wire.id)));
  }
}

/** How much ink is left of a wire that steps back. */
const FADED = 0.36;

/** Paper across a wire, again and again: it hangs in the air. */
function cutUp(
  brush: CanvasRenderingContext2D,
  wires: readonly PlacedWire[],
  zoom: number,
  theme: PaintTheme,
): void {
  const far = zoom < NEAR;
  brush.strokeStyle = resolveInk("paper", theme) ?? "";
  brush.lineCap = "butt";
  brush.lineJoin = "round";
  brush.setLineDash(far ? [4 / zoom, 4 / zoom] : [4, 5]);
  for (const { wire, path } of wires) {
    const width = wireWidth(wire.area_mm2) + OUTLINE + 1;
    brush.lineWidth = far ? Math.max(width, 3 / zoom) : width;
    brush.beginPath();
    brush.moveTo(path[0]!, path[1]!);
    for (let i = 2; i + 1 < path.length; i += 2) brush.lineTo(path[i]!, path[i + 1]!);
    brush.stroke();
  }
  brush.setLineDash([]);
}

/** What is written in faded wires stays readable. */
function paintLabels(brush: CanvasRenderingContext2D, wires: readonly PlacedWire[], theme: PaintTheme): void {
  for (const { labels } of wires) {
    paintItems(
      brush as Brush,
      labels.flatMap((label) => drawLabel(label, "quiet")),
      { theme },
    );
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
