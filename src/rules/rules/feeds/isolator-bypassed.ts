import type { Point } from "../../../electrical/points.ts";
import type { Gate } from "../../../electrical/ways.ts";
import type { Supply } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, nameOf, sayList, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "isolator-bypassed",
    group: "feeds",
    severity: "weak",
    summary: "Where a battery has a master switch, everything new lies behind it, or a waiver says why not.",
    source: "FCS 1362:2010 §2.9.3 (the customer's wish in writing, and a record)",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    const isolators = context.parts.filter(
      (part) => part.kind === "switch" && part.operatedBy === "isolator",
    );
    if (!isolators.length) return;
    const supplies = context.parts.filter((part): part is Supply => part.kind === "supply");
    for (const supply of supplies) {
      const plus = context.points.pointAt(supply.id, 1)!;
      const before = zoneBefore(context, plus, supplies);
      // A relay joins a second battery to what lies behind the first one's switch: that switch is none of its own.
      const near = new Set(zoneFrom(context, context.circuitOf(plus).circuit.id, isPlain));
      const own = isolators.filter((part) =>
        [1, 2].some((number) => near.has(context.points.circuitAt(part.id, number).circuit.id)),
      );
      if (!own.length) continue;
      const live = [...before].flatMap((id) => context.points.circuits[id]!.points).filter(isFed);
      for (const points of byPart(live)) {
        points.sort(byName);
        const names = sayList(own.map(({ designation }) => designation));
        yield {
          message: `${sayPoints(context, points)} ${points.length === 1 ? "is" : "are"} fed from ${nameOf(plus)} past the master switch ${names}.`,
          consequence: "It stays live when everybody believes that all is off.",
          remedy: `Take the feed from behind ${names}. If it has to stay live, as an alarm or a bilge pump may, have the owner's wish in writing and waive this with it.`,
          about: [...points.map(({ at }) => at), { part: own[0]!.id }],
        };
      }
    }
  },
});

const isIsolator = (gate: Gate) => gate.kind === "switch" && gate.operatedBy === "isolator";

const isPlain = (gate: Gate) => !isIsolator(gate) && gate.kind !== "make" && gate.kind !== "rest";

/** The circuits that a battery feeds with its isolators open, up to another battery's post. */
function zoneBefore(context: Context, plus: Point, supplies: readonly Supply[]): ReadonlySet<number> {
  const posts = new Set(supplies.map(({ id }) => context.points.circuitAt(id, 1).circuit.id));
  const start = context.circuitOf(plus).circuit.id;
  const zone = new Set([start]);
  for (const from of zone) {
    if (from !== start && posts.has(from)) continue;
    for (const { to, gate } of context.ways[from] ?? []) if (!isIsolator(gate)) zone.add(to);
  }
  for (const id of posts) if (id !== start) zone.delete(id);
  return zone;
}

/** Belongs before a master switch: what charges or measures the battery, and what keeps a boat afloat. */
const BEFORE: ReadonlySet<string> = new Set([
  "battery-sense",
  "bilge-pump",
  "bilge-float",
  "bilge-alarm",
  "alternator-output",
  "starter-signal",
]);

function isFed(point: Point): boolean {
  if (point.direction !== "takes" || point.side === "vehicle" || BEFORE.has(point.means.id)) return false;
  if (point.means.group === "ground") return false;
  if (point.part.kind === "load") return true;
  if (point.part.kind === "module" && point.part.role === "charger") return false;
  return point.contact.cavity !== null && point.means.group !== "none";
}

/** The inputs of each box together. */
function byPart(points: readonly Point[]): readonly Point[][] {
  const groups = new Map<string, Point[]>();
  for (const point of points) {
    const key = point.unit ?? point.part.id;
    const known = groups.get(key);
    if (known) known.push(point);
    else groups.set(key, [point]);
  }
  return [...groups.values()];
}
