import { type Edit, group } from "../graph/edits/edit.ts";
import type { Harness, PartId, Place, WireId } from "../graph/harness.ts";
import type { Arranged, ArrangeProblem } from "./arrange/types.ts";
import { labelText, stubLength } from "./label.ts";
import { columnOf, shapesOf } from "./scene.ts";

/** What the arranger needs to know of a harness: outlines, ports, wires, and what is pinned where. */
export function arrangeProblem(harness: Harness): ArrangeProblem {
  const shapes = shapesOf(harness);
  const stubs = new Map<PartId, { left: number; right: number }>();
  const wires: ArrangeProblem["wires"][number][] = [];
  for (const wire of Object.values(harness.wires)) {
    const stub = stubLength(labelText(wire, harness.settings.sizes));
    for (const end of wire.ends) {
      if (end === "loose") continue;
      const room = stubs.get(end.part) ?? { left: 0, right: 0 };
      stubs.set(end.part, room);
      const port = shapes.get(end.part)?.ports.find((one) => one.contact === end.contact);
      if (port?.side === "left") room.left = Math.max(room.left, stub);
      else if (port?.side === "right") room.right = Math.max(room.right, stub);
    }
    const [a, b] = wire.ends;
    if (a === "loose" || b === "loose") continue;
    wires.push({
      id: wire.id,
      from: { block: a.part, contact: a.contact },
      to: { block: b.part, contact: b.contact },
    });
  }
  const blocks = Object.values(harness.parts).map((part) => {
    const shape = shapes.get(part.id)!;
    const place = harness.layout.places[part.id];
    return {
      id: part.id,
      width: shape.width,
      height: shape.height,
      ports: shape.ports
        .filter((port) => port.slot === 0)
        .map(({ contact, x, y, side }) => ({ contact, x, y, side })),
      column: columnOf(part),
      mayTurn: columnOf(part) === "between" && !place?.pinned,
      pinned: place?.pinned ? { x: place.x, y: place.y } : null,
      stub: stubs.get(part.id) ?? { left: 0, right: 0 },
    };
  });
  return { blocks, wires };
}

/** The edit that puts an arrangement into the harness. Pinned parts stay; every wire is routed anew. */
export function arrangementEdit(harness: Harness, arranged: Arranged): Edit {
  const places: Record<PartId, Place> = {};
  for (const part of Object.values(harness.parts)) {
    const at = arranged.places.get(part.id);
    const old = harness.layout.places[part.id];
    if (!at || old?.pinned) continue;
    places[part.id] = {
      x: at.x,
      y: at.y,
      pinned: false,
      turned: (old?.turned ?? false) !== arranged.turned.has(part.id),
    };
  }
  const paths: Record<WireId, null> = {};
  for (const id of Object.keys(harness.layout.paths)) paths[id as WireId] = null;
  return group("arrange", [{ kind: "lay-out", places, paths }]);
}

/** The edit that keeps the routes a scene found, so that the drawing stays as it was seen. `null` if none changed. */
export function keepPaths(
  harness: Harness,
  routed: ReadonlyMap<WireId, { readonly path: readonly number[] }>,
): Edit | null {
  const paths: Record<WireId, readonly number[]> = {};
  let changed = false;
  for (const [id, { path }] of routed) {
    if (harness.layout.paths[id] === path) continue;
    paths[id] = path;
    changed = true;
  }
  return changed ? { kind: "lay-out", places: {}, paths } : null;
}
