import type { Point, PointCircuit } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { DATA_LINES, isCan, lineOf, otherHalves } from "../../shared/data-lines.ts";
import { wantsVolts } from "../../shared/relays.ts";
import { straightOn } from "../../shared/straight.ts";
import { byName, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "data-lead-on-wrong-bus",
    group: "data",
    severity: "fault",
    summary: "A data lead is joined to leads of its own bus and to nothing else.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["same-function-unjoined", "required-lead-missing"],
  },
  *check(context) {
    const told = new Set<number>();
    for (const lead of [...context.withFunction(...DATA_LINES)].sort(byName)) {
      const circuit = context.circuitOf(lead);
      if (told.has(circuit.circuit.id)) continue;
      told.add(circuit.circuit.id);
      if (circuit.points.length < 2 && !context.ways[circuit.circuit.id]) continue;
      const found = mixed(context, circuit) ?? tied(context, circuit) ?? split(context, circuit, told);
      if (found) yield found;
    }
  },
});

/** Two kinds of bus, or a bus and a lead that is no data lead. */
function mixed(context: Context, circuit: PointCircuit): Found | null {
  const lines = circuit.points.filter((point) => lineOf(point)).sort(byName);
  const families = new Set(lines.map((point) => lineOf(point)!.family));
  const beyond = straightOn(context, circuit)
    .slice(1)
    .flatMap(({ points }) => points.filter(wantsVolts));
  const foreign = [...circuit.points, ...beyond]
    .filter((point) => isForeign(context, context.circuitOf(point), point))
    .sort(byName);
  if (families.size < 2 && !foreign.length) return null;
  const all = [...lines, ...foreign];
  return {
    message: foreign.length
      ? `${sayPoints(context, lines)} ${lines.length === 1 ? "is" : "are"} joined to ${sayPoints(context, foreign)}, which ${foreign.length === 1 ? "is" : "are"} no data lead.`
      : `Leads of different buses are joined: ${sayPoints(context, all)}.`,
    consequence: foreign.length
      ? "The other lead drags the bus down, or puts volts on it: neither works, and a control unit may be harmed."
      : "The buses speak at different volts and speeds: none of them works, and the weaker driver may be harmed.",
    remedy: "Part them, and bring each lead to the bus that its chart names.",
    about: all.map((point) => point.at),
  };
}

/** Leads of which rules of their own tell when data is on them. */
const TOLD_ELSEWHERE = new Set(["parking-brake"]);
const SIGNALS = new Set(["speaker", "line-level", "video", "antenna"]);

function isForeign(
  context: Context,
  circuit: PointCircuit,
  { part, means, direction, unit }: Point,
): boolean {
  if (unit === null || part.kind === "relay" || TOLD_ELSEWHERE.has(means.id)) return false;
  if (means.group === "data" || means.group === "none" || means.group === "safety") return false;
  if (SIGNALS.has(means.group)) return true;
  // Volts and grounds that hold the lead are told as such.
  if (direction === "gives" || context.feeds.isLive(circuit) || context.grounds.isLive(circuit)) return false;
  return means.active === "supply" || means.active === "ground";
}

/** Both buses of one box in one circuit. */
function tied(context: Context, circuit: PointCircuit): Found | null {
  const leads = circuit.points.filter(isCan).sort(byName);
  for (const first of leads) {
    const second = leads.find(
      (other) =>
        other.unit === first.unit &&
        other.means !== first.means &&
        lineOf(other)!.half === lineOf(first)!.half &&
        first.unit !== null,
    );
    if (!second) continue;
    return {
      message: `${sayPoint(context, first)} and ${sayPoint(context, second)} are two buses of one box, joined to each other.`,
      consequence: "Messages of the one bus disturb the other: warnings everywhere, and neither is reliable.",
      remedy: "Part them, and bring the new equipment to the bus that its maker names.",
      about: [first.at, second.at],
    };
  }
  return null;
}

/** The two leads of a pair go to two buses of another box. */
function split(context: Context, circuit: PointCircuit, told: Set<number>): Found | null {
  for (const own of circuit.points.filter(isCan).sort(byName)) {
    const far = circuit.points.find(
      (other) =>
        isCan(other) &&
        other.unit !== own.unit &&
        lineOf(other)!.half === lineOf(own)!.half &&
        other.means !== own.means,
    );
    if (!far) continue;
    for (const half of otherHalves(context, own)) {
      const there = context.circuitOf(half);
      const wrong = there.points.find(
        (other) => other.unit === far.unit && isCan(other) && other.means.id === half.means.id,
      );
      if (!wrong || otherHalves(context, far).some((point) => there.points.includes(point))) continue;
      told.add(there.circuit.id);
      return {
        message: `${sayPoint(context, own)} is joined to ${sayPoint(context, far)}, and ${sayPoint(context, half)} to ${sayPoint(context, wrong)}: one lead from each of two buses.`,
        consequence: "The module hears neither bus, and disturbs both.",
        remedy: "Take both leads of the pair to one bus, the one that the module's maker names.",
        about: [own, half, far, wrong].map((point) => point.at),
      };
    }
  }
  return null;
}
