import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { byName, nameOf, sayPoint, sayPoints, sayStates } from "../../words.ts";

export default defineRule({
  meta: {
    id: "antenna-amplifier-unpowered",
    group: "signals",
    severity: "weak",
    summary: "An antenna with an amplifier or a motor gets volts while the receiver plays.",
    source: "ISO 10487 (A5, antenna supply; through a summary); five how-to pages agree on the symptom",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
    brings: ["same-function-unjoined", "spare-not-capped", "loose-lead"],
  },
  *check(context) {
    const inputs = antennaInputs(context);
    if (!inputs.length) return;
    const givers = context
      .withFunction("antenna-power", "amplifier-turn-on")
      .filter((point) => point.direction === "gives")
      .sort((a, b) => a.means.id.length - b.means.id.length || byName(a, b));
    for (const input of inputs) {
      const isAntenna = isAntennaBox(context, input);
      // Without a receiver on the drawing nobody can say what ought to feed a vehicle's lead.
      if (!isAntenna && !givers.length) continue;
      const circuit = context.circuitOf(input);
      const live = context.feeds.liveAt(circuit);
      if (live.some((state) => WITH_SOUND.has(state))) continue;
      if (circuit.points.some((other) => other !== input && mayGive(other))) continue;
      const best = givers.filter(({ means }) => means === givers[0]!.means).slice(0, 4);
      yield {
        message: `${sayPoint(context, input)} ${live.length ? `is live only ${sayStates(live)}` : "gets no volts"}.`,
        consequence: "The antenna's amplifier or its mast stays dead: hiss, and only strong stations.",
        remedy: best.length
          ? `Join ${nameOf(input)} to ${sayPoints(context, best)}, at the current that its output allows.`
          : `Join ${nameOf(input)} to the receiver's antenna power, or to its amplifier turn-on where it has no other.`,
        about: [input.at],
      };
    }
  },
});

const WITH_SOUND: ReadonlySet<string> = new Set(["off", "accessory", "run", "unit-on", "at-times"]);

function isAntennaBox(context: Context, { part, ...point }: Point): boolean {
  if (part.kind === "load") return part.type === "antenna";
  return context.moduleOf({ part, ...point })?.role === "antenna";
}

/** Where antennas take their volts; of the vehicle's own leads, those that somebody has brought to the job. */
function antennaInputs(context: Context): readonly Point[] {
  const found = context.withFunction("antenna-power").filter((point) => {
    if (point.direction !== "takes" || context.isLeftOut(point)) return false;
    if (isAntennaBox(context, point)) return true;
    const { cavity } = point.contact;
    return (
      point.side === "vehicle" &&
      cavity?.use === "expected" &&
      context.circuitOf(point).caps.length === 0 &&
      (cavity.lead !== null || context.points.wiresAt(point).length > 0)
    );
  });
  for (const part of context.parts) {
    if (part.kind === "load" && part.type === "antenna" && part.function !== "antenna-power") {
      const point = context.points.pointAt(part.id, 1);
      if (point && point.means.active === "supply") found.push(point);
    }
    if (part.kind !== "module" || part.role !== "antenna") continue;
    const own = context.points.byUnit.get(part.id) ?? [];
    if (own.some(({ means }) => means.id === "antenna-power")) continue;
    found.push(
      ...own.filter(
        (point) => point.means.group === "feed" && point.direction === "takes" && !context.isLeftOut(point),
      ),
    );
  }
  return [...found].sort(byName);
}

/** Of what nobody has named, nobody can say that it does not give. */
function mayGive(point: Point): boolean {
  return point.means.id === "unknown" && point.contact.cavity !== null && point.direction !== "takes";
}
