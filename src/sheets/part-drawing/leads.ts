import type { Primitive } from "../../layout/drawing.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import { circle, HEAVY, line } from "./pen.ts";

/** Width of a symbol's own leads. */
export const LEAD = 1.5;

/** Heights at which the wires of a contact land, top to bottom. */
export function landings(shape: Shape, contact: number): readonly number[] {
  return shape.ports.filter((port) => port.contact === contact).map((port) => port.y);
}

/**
 * Leads from the edge at `from` to `to`, one for each wire of the contact, tied together at `to` with a dot where
 * there are several: the only places where wires of one circuit meet.
 */
export function leadsIn(shape: Shape, contact: number, from: number, to: number): readonly Primitive[] {
  const heights = landings(shape, contact);
  const items: Primitive[] = heights.map((y) => line(from, y, to, y, LEAD));
  if (heights.length > 1) {
    items.push(line(to, heights[0]!, to, heights.at(-1)!, LEAD));
    for (const y of heights.slice(0, -1)) items.push(circle(to, y, HEAVY + 1, { fill: "ink" }));
  }
  return items;
}
