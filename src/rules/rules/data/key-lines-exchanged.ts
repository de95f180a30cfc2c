import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { exchangeFix } from "../../shared/swap.ts";
import { byName, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "key-lines-exchanged",
    group: "data",
    severity: "weak",
    summary: "Each line of steering-wheel keys goes to the input of its own number.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const told = new Set<Point>();
    const order = (point: Point) => (point.side === "equipment" ? 0 : 1);
    const firsts = context.withFunction("steering-key-1");
    for (const first of [...firsts].sort((a, b) => order(a) - order(b) || byName(a, b))) {
      if (told.has(first)) continue;
      const second = ofUnit(context, "steering-key-2", first.unit);
      // One line alone may go to either input: the reader is taught its buttons.
      const there = second && crossed(context, first, second);
      if (!second || !there) continue;
      for (const point of [first, second, ...there]) told.add(point);
      const [otherSecond, otherFirst] = there;
      yield {
        message: `The two lines of keys are exchanged: ${sayPoint(context, first)} is joined to ${sayPoint(context, otherSecond)}, and ${sayPoint(context, second)} to ${sayPoint(context, otherFirst)}.`,
        consequence:
          "Buttons do nothing, or each does what another should, until somebody teaches them anew; a module that is not taught never works.",
        remedy: "Exchange the two leads at one end, then teach the buttons again.",
        about: [first, second, otherSecond, otherFirst].map((point) => point.at),
        fix: exchangeFix(context, first, second),
      };
    }
  },
});

function ofUnit(context: Context, name: string, unit: string | null): Point | null {
  if (unit === null) return null;
  const own = context.withFunction(name).filter((point) => point.unit === unit);
  return own.length === 1 ? own[0]! : null;
}

/** The two lines of another box, where both are joined crosswise. */
function crossed(context: Context, first: Point, second: Point): readonly [Point, Point] | null {
  const one = context.circuitOf(first);
  const two = context.circuitOf(second);
  if (one === two) return null;
  for (const otherSecond of [...one.points].sort(byName)) {
    if (otherSecond.means.id !== "steering-key-2" || otherSecond.unit === first.unit) continue;
    const otherFirst = two.points.find(
      (point) => point.means.id === "steering-key-1" && point.unit === otherSecond.unit,
    );
    if (otherFirst) return [otherSecond, otherFirst];
  }
  return null;
}
