import type { Node } from "reactflow";
import type { PartId } from "../../graph/harness.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import type { PlacedPart, Scene } from "../../layout/scene.ts";
import { sayPart } from "./say-model.ts";

export type PartNodeType = Node<{ readonly placed: PlacedPart }, "part">;

const NO_HANDLES: [] = [];
const NAMED_PART = { "aria-roledescription": "part" };
const TAKES_PRESSES = { pointerEvents: "all" } as const;

/**
 * The nodes of a scene. A node whose part stands and looks as before is the very same object, so that only what
 * changed is drawn again. Sizes come from the one geometry: nothing is measured on the page.
 */
export function nodesOf(scene: Scene, before: readonly PartNodeType[]): PartNodeType[] {
  const known = new Map(before.map((node) => [node.id, node]));
  const nodes: PartNodeType[] = [];
  for (const placed of scene.parts.values()) {
    const old = known.get(placed.part.id);
    const alike = old && sameLook(old.data.placed, placed);
    // The kept data may have been made for another place: where the node stands is what counts.
    if (old && alike && old.position.x === placed.x && old.position.y === placed.y) {
      nodes.push(old);
      continue;
    }
    const { width, height } = placed.shape;
    nodes.push({
      id: placed.part.id,
      type: "part",
      position: { x: placed.x, y: placed.y },
      data: old && alike ? old.data : { placed },
      width,
      height,
      measured: { width, height },
      handles: NO_HANDLES,
      ariaRole: "group",
      ariaLabel: sayPart(placed.part),
      domAttributes: NAMED_PART,
      style: TAKES_PRESSES,
      draggable: false,
      selectable: false,
      focusable: false,
    });
  }
  const unchanged = nodes.length === before.length && nodes.every((node, index) => node === before[index]);
  return unchanged ? (before as PartNodeType[]) : nodes;
}

/** Whether two placed parts are drawn alike, wherever they stand. */
export function sameLook(a: PlacedPart, b: PlacedPart): boolean {
  return a.part === b.part && a.turned === b.turned && a.pinned === b.pinned && sameShape(a.shape, b.shape);
}

function sameShape(a: Shape, b: Shape): boolean {
  if (a === b) return true;
  if (a.width !== b.width || a.height !== b.height || a.ports.length !== b.ports.length) return false;
  return a.ports.every((port, index) => {
    const other = b.ports[index]!;
    return port.contact === other.contact && port.x === other.x && port.y === other.y;
  });
}

/** The place of a contact on the drawing; its first port where several wires land on it. */
export function contactSpot(
  scene: Scene,
  part: PartId,
  contact: number,
): { readonly x: number; readonly y: number; readonly side: "left" | "right" } | null {
  const placed = scene.parts.get(part);
  const port = placed?.shape.ports.find((one) => one.contact === contact);
  if (!placed || !port) return null;
  return { x: placed.x + port.x, y: placed.y + port.y, side: port.side === "left" ? "left" : "right" };
}
