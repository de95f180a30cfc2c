import type { Capacitor, Diode, Fuse, Resistor, Switch } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import { drawCaption } from "./caption.ts";
import { LEAD, landings, leadsIn } from "./leads.ts";
import { box, circle, HAIR, HEAVY, inkStroke, line, mirrored, path, run } from "./pen.ts";

type TwoEnded = Fuse | Switch | Diode | Resistor | Capacitor;

/** Fuse, switch, diode, resistor, capacitor: contact 1 left, 2 right. Shapes: IEC 60617 (from memory). */
export function drawTwoEnded(part: TwoEnded, shape: Shape, turned: boolean): readonly Primitive[] {
  const { width } = shape;
  const x = width / 2;
  const y = landings(shape, 1)[0] ?? 32;
  const { half, items } = symbol(part, x, y);
  const tie = x - 24;
  const all = [
    ...leadsIn(shape, 1, 0, tie),
    ...mirrored(leadsIn(shape, 2, 0, tie), width, true),
    line(tie, y, x - half, y, LEAD),
    line(x + half, y, width - tie, y, LEAD),
    ...items,
  ];
  return [...mirrored(all, width, turned), ...drawCaption(part, width, shape.height)];
}

/** The symbol about a point; `half` is how far its own ends lie from there. */
function symbol(part: TwoEnded, x: number, y: number): { half: number; items: readonly Primitive[] } {
  const filled = { fill: "paper", stroke: inkStroke(LEAD) } as const;
  switch (part.kind) {
    case "fuse":
      if (part.form === "breaker") return { half: 11, items: breaker(x, y) };
      return { half: 0, items: [box(x - 16, y - 6.5, 32, 13, filled), line(x - 18, y, x + 18, y, LEAD)] };
    case "resistor":
      return { half: 16, items: [box(x - 16, y - 6.5, 32, 13, filled)] };
    case "capacitor":
      return {
        half: 3.5,
        items: [x - 3.5, x + 3.5].map((at) => line(at, y - 10, at, y + 10, HEAVY + 0.5)),
      };
    case "diode":
      // Anode left, cathode right: the bar is at contact 2.
      return {
        half: 9,
        items: [
          path(run([x - 9, y - 9, x + 9, y, x - 9, y + 9], true), filled),
          line(x - 9, y, x + 9, y, HAIR),
          line(x + 9, y - 9, x + 9, y + 9, HEAVY),
        ],
      };
    case "switch":
      return { half: 12, items: [...openContact(x - 12, x + 12, y, part.operatedBy === "hand")] };
  }
}

/** A make contact at rest: open, hinged on the left. A hand is told by the bar at the end of the dashed link. */
function openContact(from: number, to: number, y: number, byHand: boolean): readonly Primitive[] {
  const middle = (from + to) / 2;
  const items: Primitive[] = [
    circle(from, y, 2, { fill: "ink" }),
    circle(to, y, 2, { fill: "paper", stroke: inkStroke(LEAD) }),
    line(from, y, to - 2, y - 10, LEAD),
    line(middle, y - 4, middle, byHand ? y - 13 : y - 11, HAIR, "ink", [2, 1.5]),
  ];
  if (byHand) items.push(line(middle - 4, y - 13, middle + 4, y - 13, LEAD));
  return items;
}

/** A thermal circuit breaker: two contact points under an arched blade. */
function breaker(x: number, y: number): readonly Primitive[] {
  return [
    circle(x - 11, y, 2, { fill: "ink" }),
    circle(x + 11, y, 2, { fill: "ink" }),
    path([
      ["M", x - 11, y - 3],
      ["C", x - 6, y - 11, x + 6, y - 11, x + 11, y - 3],
    ]),
  ];
}
