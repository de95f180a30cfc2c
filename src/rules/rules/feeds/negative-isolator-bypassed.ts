import type { Point } from "../../../electrical/points.ts";
import type { Gate } from "../../../electrical/ways.ts";
import type { Module, PartId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "negative-isolator-bypassed",
    group: "feeds",
    severity: "danger",
    summary:
      "Where the master switch lies between the battery's minus and the frame, nothing else joins the two.",
    source: "classic-car mailing list, April 1998, on a radio with a memory feed round a cut-off switch",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
  },
  *check(context) {
    for (const part of context.parts) {
      if (part.kind !== "switch" || part.operatedBy !== "isolator") continue;
      const sides = [1, 2].map((number) => context.points.circuitAt(part.id, number).circuit.id);
      for (const supply of context.parts) {
        if (supply.kind !== "supply") continue;
        const minus = context.points.circuitAt(supply.id, 2).circuit.id;
        const battery = sides.findIndex((side) => zoneFrom(context, side, notIsolator).includes(minus));
        if (battery < 0) continue;
        const found = wayRound(context, minus, sides[1 - battery]!);
        if (!found) continue;
        yield {
          message: found.length
            ? `The master switch ${part.designation} lies in the negative lead, and ${sayList(found.map((point) => sayPoint(context, point)))} lead round it from ${supply.designation} to the frame.`
            : `The master switch ${part.designation} lies in the negative lead, and leads join both its sides.`,
          consequence:
            "With the switch open everything comes back this way; when the engine is started, the starter's current tries to go through a thin lead.",
          remedy:
            "Take all grounds to the frame's side of the switch. What has to stay live gets a small fused feed from the battery's plus, and its ground at the frame too.",
          about: [{ part: part.id }, ...found.map(({ at }) => at)],
        };
      }
    }
  },
});

const notIsolator = (gate: Gate) => !(gate.kind === "switch" && gate.operatedBy === "isolator");

type Tie = readonly [from: Point, to: Point, circuit: number];

/**
 * The grounds of boxes, in pairs, by which current gets from the battery's minus to the far side of the switch past
 * it; empty where leads alone do it, `null` where nothing does.
 */
function wayRound(context: Context, minus: number, far: number): readonly Point[] | null {
  const frame = frameSide(context, far);
  const before = new Map<number, Tie | null>();
  const queue: number[] = [];
  const reach = (circuit: number, by: Tie | null) => {
    for (const id of zoneFrom(context, circuit, notIsolator)) {
      if (before.has(id)) continue;
      before.set(id, by);
      queue.push(id);
    }
  };
  reach(minus, null);
  for (let next = 0; next < queue.length; next++) {
    const circuit = queue[next]!;
    if (frame.has(circuit)) {
      const way: Point[] = [];
      for (let step = before.get(circuit); step; step = before.get(step[2])) way.unshift(step[0], step[1]);
      return way;
    }
    for (const point of [...context.points.circuits[circuit]!.points].sort(byName))
      for (const other of tiedTo(context, point))
        reach(context.circuitOf(other).circuit.id, [point, other, circuit]);
  }
  return null;
}

/** What lies behind the switch; the frame is one piece of metal, so every stud on it counts. */
function frameSide(context: Context, far: number): ReadonlySet<number> {
  const zone = new Set(zoneFrom(context, far, notIsolator));
  const studs = context.points.all.filter(isStud).map((point) => context.circuitOf(point).circuit.id);
  if (studs.some((id) => zone.has(id))) for (const id of studs) zone.add(id);
  return zone;
}

function isStud({ part, means, direction, side }: Point): boolean {
  if (part.kind === "ground") return part.serves !== "battery-post";
  return means.group === "ground" && direction === "gives" && side === "vehicle";
}

/** Contacts of the same box that its case or its board joins: its grounds and its shields. */
function tiedTo(context: Context, point: Point): readonly Point[] {
  if (point.unit === null || point.side === "vehicle") return [];
  const owner = context.harness.parts[point.unit as PartId];
  const module = owner?.kind === "module" ? owner : null;
  if (!isTied(module, point)) return [];
  return (context.points.byUnit.get(point.unit) ?? [])
    .filter((other) => other !== point && isTied(module, other) && (module || other.part === point.part))
    .sort(byName);
}

function isTied(module: Module | null, { means }: Point): boolean {
  const isSignals = means.polarity === "minus" && (means.group === "video" || means.group === "line-level");
  if (isSignals || SIGNAL_GROUNDS.has(means.id)) return module?.signalGround !== "isolated";
  return means.group === "ground";
}

const SIGNAL_GROUNDS: ReadonlySet<string> = new Set([
  "audio-ground",
  "shield-drain",
  "sense-ground",
  "aux-ground",
  "microphone-shield",
]);
