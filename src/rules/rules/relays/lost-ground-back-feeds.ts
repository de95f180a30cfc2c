import { digits } from "../../../electrical/figure.ts";
import { sayState } from "../../../electrical/operate/key-state.ts";
import { contactKey } from "../../../graph/contacts.ts";
import type { Load } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { type About, defineRule } from "../../rule.ts";
import {
  type Ghost,
  type Opening,
  openingsOf,
  sharedReturns,
  worstGhost,
} from "../../shared/lost-grounds.ts";
import { compareNames, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "lost-ground-back-feeds",
    group: "relays",
    severity: "fault",
    summary:
      "No lamp is lit backwards through another, nor would be if one shared ground opened under a safety lamp.",
    source:
      "a caravan magazine's column on poor grounding (current finds the next filament); an owner's blog on trailer wiring (volts of the wrong polarity at the lamp)",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["unit-without-ground"],
  },
  *check(context) {
    for (const [circuit, loads] of sharedReturns(context)) {
      const isGrounded = context.grounds.isLive(context.points.circuits[circuit]!);
      if (!isGrounded) {
        const ghost = worstGhost(context, loads, null);
        if (ghost) yield tellLost(context, loads, ghost);
        continue;
      }
      if (!loads.some(isSafety)) continue;
      for (const opening of openingsOf(context, circuit, loads)) {
        const found = whatIf(context, opening);
        if (!found) continue;
        yield found;
        break;
      }
    }
  },
});

const SAFETY: ReadonlySet<string> = new Set([
  "stop-lamp",
  "stop-lamp-high",
  "indicator-left",
  "indicator-right",
  "stop-turn-left",
  "stop-turn-right",
]);

function isSafety(load: Load): boolean {
  return SAFETY.has(load.function);
}

function tellLost(context: Context, loads: readonly Load[], { load, volts, state }: Ghost) {
  return {
    message: `${sayNames(loads)} share a ground that reaches no frame. With the key at ${sayState(state, context.harness)}, the dead lead of ${load.designation} stands at ${digits(volts, 2)} V, back through the others.`,
    consequence:
      "Lamps glow that should be dark, those that should shine are dim or dark, and what feeds one of them feeds the others.",
    remedy: "Bring the shared ground to bare metal of the frame; give safety lamps one of their own.",
    about: loads.map((one): About => ({ part: one.id, contact: 2 })),
  };
}

/** Only where something would light up: the lifted lead has a way to ground elsewhere. */
function whatIf(context: Context, { lost, loads }: Opening) {
  if (!loads.some(isSafety)) return null;
  const ghost = worstGhost(
    context,
    loads.filter((load) => hasWayElsewhere(context, load, loads)),
    lost,
  );
  if (!ghost) return null;
  const { load, volts, state } = ghost;
  const then = context.solved.withOpen(lost, state);
  const dark = loads.filter(isSafety).flatMap((one) => {
    const before = context.solved.at(state).load(contactKey(one.id, 1));
    const after = then.load(contactKey(one.id, 1));
    return before?.works && after && !after.works ? [{ one, volts: Math.abs(after.volts) }] : [];
  });
  const name =
    "wire" in lost
      ? context.harness.wires[lost.wire]!.designation
      : context.harness.parts[lost.part]!.designation;
  return {
    severity: "weak" as const,
    message: `If ${name} opened, with the key at ${sayState(state, context.harness)}, the lead of ${load.designation} would stand at ${digits(volts, 2)} V, fed back through ${sayNames(loads.filter((one) => one !== load))}${
      dark.length
        ? `, and ${sayList(dark.map(({ one, volts: left }) => `${one.designation} would have ${digits(left, 2)} V`))}`
        : ""
    }.`,
    consequence:
      "One bad ground makes other lamps glow and a safety lamp dark, and nobody notices from the seat.",
    remedy: `Give ${sayNames(loads.filter(isSafety))} a ground that nothing else uses.`,
    about: [lost as About, ...loads.map((one): About => ({ part: one.id, contact: 2 }))],
  };
}

function hasWayElsewhere(context: Context, load: Load, beneath: readonly Load[]): boolean {
  return context.points
    .circuitAt(load.id, 1)
    .points.some(
      ({ part, contact, direction }) =>
        part !== load &&
        direction === "takes" &&
        (part.kind === "load" ? contact.number === 1 && !beneath.includes(part) : contact.cavity !== null),
    );
}

function sayNames(loads: readonly Load[]): string {
  return sayList(loads.map(({ designation }) => designation).sort(compareNames));
}
