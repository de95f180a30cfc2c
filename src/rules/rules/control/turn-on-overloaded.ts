import type { Point } from "../../../electrical/points.ts";
import type { Relay } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { givesVolts } from "../../shared/near.ts";
import { byName, nameOf, sayList, sayPoint } from "../../words.ts";

/** Coil of a 12 V mini relay of which nothing is stated. @source datasheets of mini relays, 85 to 90 Ω; from memory */
const USUAL_COIL_ohm = 85;

export default defineRule({
  meta: {
    id: "turn-on-overloaded",
    group: "control",
    severity: "weak",
    summary: "What hangs on a turn-on output draws no more than the output gives.",
    source:
      "a trade magazine's measurements of turn-on outputs (2022): count what is drawn, not how many draw; the figure where a chart is silent stands in the profile",
    reads: [...CIRCUITS, ...NAMES, "settings"],
    fixable: false,
  },
  *check(context) {
    for (const output of [...context.withFunction("amplifier-turn-on", "antenna-power")].sort(byName)) {
      if (output.direction !== "gives" || !output.contact.cavity) continue;
      const drawn = drawnFrom(context, output);
      if (!drawn) continue;
      const sum_A = drawn.reduce((sum, { amps }) => sum + amps, 0);
      const stated = output.contact.cavity.current_A;
      const usual = context.profile.limits.turnOn_A;
      const limit_A = typeof stated === "number" && stated > 0 ? stated : usual.value;
      if (sum_A <= limit_A * 1.001) continue;
      const heavy = [...drawn].sort((a, b) => b.amps - a.amps || byName(a.point, b.point));
      yield {
        severity: limit_A === stated || sum_A > 2 * limit_A ? "fault" : "weak",
        message: `${sayPoint(context, output)} has to give ${say(sum_A)} A: ${sayList(
          heavy.map(({ point, amps }) => `${say(amps)} A to ${nameOf(point)}`),
        )}. ${
          limit_A === stated
            ? `Its chart allows ${say(limit_A)} A.`
            : `Its chart is silent; ${say(limit_A)} A is taken (${usual.book}).`
        }`,
        consequence:
          "The transistor behind the output overheats and dies, or its volts sag so far that what it wakes does not wake.",
        remedy: `Let ${nameOf(output)} pull the coil of one relay with a diode across it, and feed the rest through the relay's contact, behind a fuse.`,
        about: [output.at, ...heavy.map(({ point }) => point.at)].slice(0, 8),
      };
    }
  },
});

type Drawn = { readonly point: Point; readonly amps: number };

/** What draws from an output and how much of it is stated; `null` where something else gives volts there too. */
function drawnFrom(context: Context, output: Point): readonly Drawn[] | null {
  const ids = [context.circuitOf(output).circuit.id];
  const seen = new Set(ids);
  const drawn: Drawn[] = [];
  for (let next = 0; next < ids.length; next++) {
    for (const point of context.points.circuits[ids[next]!]!.points) {
      if (point !== output && givesVolts(point) && point.unit !== output.unit) return null;
      const amps = ampsOf(context, point);
      if (amps > 0) drawn.push({ point, amps });
    }
    for (const { to, gate } of context.ways[ids[next]!] ?? []) {
      // A relay's contact at rest or pulled: what it leads to hangs on the output in one of the two.
      if (seen.has(to) || gate.kind === "rest") continue;
      seen.add(to);
      if (context.grounds.isLive(context.points.circuits[to]!)) continue;
      ids.push(to);
    }
  }
  return drawn;
}

function ampsOf(context: Context, point: Point): number {
  const { part, contact } = point;
  if (part.kind === "load") return contact.number === 1 && part.current_A !== "unknown" ? part.current_A : 0;
  if (part.kind === "relay") return coil_A(context, part, point);
  const current_A = contact.cavity?.current_A;
  return point.direction === "takes" && typeof current_A === "number" ? current_A : 0;
}

/** By 86 or 85, whichever of the two is on the output's side. */
function coil_A(context: Context, relay: Relay, { contact }: Point): number {
  if (contact.label !== "85" && contact.label !== "86") return 0;
  const nominal_V = context.harness.settings.systemVoltage_V;
  // A coil of twice the volts has four times the resistance at the same power.
  const ohm = relay.coil_ohm === "unknown" ? USUAL_COIL_ohm * (nominal_V / 12) ** 2 : relay.coil_ohm;
  return nominal_V / ohm;
}

/** Two figures: more would say that the sum is better known than it is. */
function say(amps: number): string {
  return String(Number(amps.toPrecision(2)));
}
