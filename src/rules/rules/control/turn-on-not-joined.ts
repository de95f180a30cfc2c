import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isInput } from "../../shared/near.ts";
import { byName, nameOf, sayPoint, sayPoints } from "../../words.ts";

export default defineRule({
  meta: {
    id: "turn-on-not-joined",
    group: "control",
    severity: "fault",
    summary: "Something gives volts to the turn-on lead of every amplifier that does not wake by its signal.",
    source: "an audio shop's guide to turn-on leads; the pattern: common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "sizes"],
    fixable: false,
    brings: ["spare-not-capped"],
  },
  *check(context) {
    const { required, spokenOf } = context.unjoined;
    for (const point of [...context.withFunction("amplifier-turn-on")].sort(byName)) {
      // The vehicle's own amplifier, and a lead that the chart calls needed or that has its partner, are told elsewhere.
      if (!isInput(context, point) || point.side === "vehicle") continue;
      if (required.has(point) || spokenOf.has(point) || !mustBeWoken(context, point)) continue;
      const circuit = context.circuitOf(point);
      if (circuit.circuit.loose.length || context.feeds.isLive(circuit)) continue;
      const others = context.points.partners(point);
      if (others.some((other) => mayGive(other))) continue;
      const known = context.moduleOf(point)?.wakes === "by-lead";
      yield {
        severity: known ? "fault" : "weak",
        message: others.length
          ? `${sayPoint(context, point)} is joined to ${sayPoints(context, others)}, and nothing among them gives volts.`
          : `${sayPoint(context, point)} is joined to nothing that gives volts.`,
        consequence: known
          ? "The amplifier never wakes."
          : "Unless the amplifier wakes by its signal, it stays dead.",
        remedy: `Join ${nameOf(point)} to the amplifier turn-on of the source. Where the amplifier is set to wake by its signal, say so in its sheet.`,
        about: [point.at],
      };
    }
  },
});

/** An amplifier whose lead is not called optional and whose feeds do not wake it. */
function mustBeWoken(context: Context, point: Point): boolean {
  const box = context.moduleOf(point);
  if (box?.wakes === "by-signal" || point.contact.cavity?.use !== "expected") return false;
  const own = point.unit === null ? [] : (context.points.byUnit.get(point.unit) ?? []);
  const draws = own.some((other) => other.means.group === "feed" && other.direction === "takes");
  const comesWithKey = own.some(
    (other) =>
      other.means.group === "feed" && other.direction === "takes" && !other.means.liveIn.includes("off"),
  );
  return draws && !comesWithKey;
}

/** A contact of which nobody can say that it does not give: an unnamed one, a relay's, a switch's. */
function mayGive(point: Point): boolean {
  if (point.direction === "gives" || point.direction === "both") return true;
  return point.means.id === "unknown" && point.direction !== "takes";
}
