import { contactsOf } from "../../graph/contacts.ts";
import type { Relay } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { SMALL_TEXT } from "../../layout/geometry/caption.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import { drawCaption } from "./caption.ts";
import { LEAD, landings, leadsIn } from "./leads.ts";
import { box, circle, HAIR, HEAVY, inkStroke, line, mirrored, path, RULE, run, words } from "./pen.ts";

const TIE = 22;
const COIL = 40;
const PIVOT = 66;
const CONTACT = 28;

/**
 * A relay at rest: coil 86-85, common 30, contacts 87, 87a, 87b by their DIN 72552 numbers.
 * Shapes: IEC 60617 (from memory).
 */
export function drawRelay(part: Relay, shape: Shape, turned: boolean): readonly Primitive[] {
  const { width, height } = shape;
  const first = (contact: number): number => landings(shape, contact)[0] ?? 40;
  const [common, coilTop, coilBottom] = [first(1), landings(shape, 3).at(-1) ?? 64, first(2)];
  const fixed = width - TIE - CONTACT;
  const items: Primitive[] = [
    box(0.75, 18, width - 1.5, height - 18 - (part.name === "" ? 1 : 15), {
      stroke: inkStroke(HAIR, [6, 2, 1, 2]),
    }),
    ...[1, 2, 3].flatMap((contact) => leadsIn(shape, contact, 0, TIE)),
    ...mirrored(
      [4, 5].flatMap((contact) => leadsIn(shape, contact, 0, TIE)),
      width,
      true,
    ),
    line(TIE, common, PIVOT, common, LEAD),
    circle(PIVOT, common, 2, { fill: "ink" }),
  ];
  const make = first(4);
  items.push(line(width - TIE, make, fixed, make, LEAD));
  const link = (PIVOT + fixed) / 2;
  let linkTop = common - 4;
  if (part.poles === "changeover") {
    // At rest the blade lies on 87a.
    const rest = first(5);
    items.push(
      ...run2(width - TIE, rest, fixed, rest, fixed, rest - 8),
      line(PIVOT, common, fixed + 3, rest - 9, LEAD),
      line(fixed, make, fixed, make + 6, LEAD),
    );
    linkTop = (common + rest - 9) / 2;
  } else {
    items.push(line(PIVOT, common, fixed - 1, common - 10, LEAD));
    if (part.poles === "double-make") {
      const second = first(5);
      items.push(
        line(width - TIE, second, fixed, second, LEAD),
        line(PIVOT, common, PIVOT, second, LEAD),
        circle(PIVOT, second, 2, { fill: "ink" }),
        line(PIVOT, second, fixed - 1, second - 10, LEAD),
      );
    }
  }
  const coilMiddle = (coilTop + coilBottom) / 2;
  items.push(
    line(COIL + 14, coilMiddle, link, coilMiddle, HAIR, "ink", [3, 2]),
    line(link, coilMiddle, link, linkTop, HAIR, "ink", [3, 2]),
    ...coil(part, coilTop, coilBottom),
  );
  for (const contact of contactsOf(part)) {
    const y = first(contact.number) - 3.5;
    const right = contact.number > 3;
    items.push(
      ...words(right ? width - 4 : 4, y, contact.label, {
        size: SMALL_TEXT,
        align: right ? "end" : "start",
        room: 24,
      }),
    );
  }
  return [...mirrored(items, width, turned), ...drawCaption(part, width, height)];
}

function run2(...points: readonly number[]): readonly Primitive[] {
  return [path(run(points), { stroke: inkStroke(LEAD) })];
}

/** The coil, and what stands across it against its own kick. */
function coil(part: Relay, top: number, bottom: number): readonly Primitive[] {
  const middle = (top + bottom) / 2;
  const items: Primitive[] = [
    line(TIE, top, COIL, top, LEAD),
    line(COIL, top, COIL, bottom, LEAD),
    line(TIE, bottom, COIL, bottom, LEAD),
    box(COIL - 14, middle - 6.5, 28, 13, { fill: "paper", stroke: inkStroke(LEAD) }),
    line(COIL - 7, middle + 6.5, COIL + 7, middle - 6.5, RULE),
  ];
  if (part.suppression !== "diode" && part.suppression !== "resistor") return items;
  const x = COIL + 22;
  items.push(...run2(COIL, top, x, top, x, bottom, COIL, bottom));
  if (part.suppression === "resistor") {
    items.push(box(x - 3.5, middle - 8, 7, 16, { fill: "paper", stroke: inkStroke(RULE) }));
  } else {
    // The bar is at 86: it blocks while 86 is fed.
    items.push(
      path(run([x - 5, middle + 4, x + 5, middle + 4, x, middle - 4], true), {
        fill: "paper",
        stroke: inkStroke(RULE),
      }),
      line(x - 5, middle - 4, x + 5, middle - 4, HEAVY),
    );
  }
  return items;
}
