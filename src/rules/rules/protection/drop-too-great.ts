import { digits } from "../../../electrical/figure.ts";
import { dropLimit, nameLoad } from "../../../electrical/operate/drop.ts";
import type { KeyState } from "../../../electrical/operate/key-state.ts";
import { pathOf } from "../../../electrical/operate/path.ts";
import { type ContactKey, refOfKey } from "../../../graph/contacts.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { lengthOf } from "../../shared/lead-walk.ts";
import { statesCurrents } from "../../shared/most.ts";
import { heaviestStates } from "../../shared/states.ts";
import { sayWhen } from "../../shared/steady.ts";
import { compareNames, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "drop-too-great",
    group: "protection",
    severity: "weak",
    summary: "What the leads to a load and back lose stays within the limits of the harness's settings.",
    source:
      "ABYC E-11, as quoted on a wire-chart page: 3 % for what must work, 10 % for the rest, or what the harness's settings say; AC 43.13-1B and workshop manuals act from 0.5 V on",
    // A harness of one group alone is solved, which takes the rest of the document along unread.
    reads: [...SOLVED, ...NAMES, "cables", "title", "tests"],
    fixable: false,
    brings: ["ground-drop-too-great"],
  },
  *check(context) {
    if (!statesCurrents(context)) return;
    const worst = new Map<ContactKey, { readonly state: KeyState; readonly lost_V: number }>();
    const [running, parked] = heaviestStates(context);
    for (const view of [running, parked]) {
      const { battery_V, state } = view;
      for (const [load, { stated_A, volts, amps }] of view.loads()) {
        if (stated_A === null || Math.abs(amps) < 1e-3) continue;
        const lost_V = battery_V - Math.abs(volts);
        if (lost_V > (worst.get(load)?.lost_V ?? 0)) worst.set(load, { state, lost_V });
      }
    }
    const byWire = new Map<Wire, Lost[]>();
    for (const [load, { state, lost_V }] of worst) {
      // What is lost inside the source counts for nothing, so this is the most that the leads can lose.
      if (lost_V <= allowed(context, load).volts) continue;
      const lost = lostOn(context, state, load);
      const main = lost?.wires[0]?.wire;
      if (lost && main) byWire.set(main, [...(byWire.get(main) ?? []), lost]);
    }
    for (const all of byWire.values()) yield say(context, all);
  },
});

/** No workshop calls less a trouble (AC 43.13-1B, workshop manuals): 0.5 V of 12. */
const TROUBLE_share = 0.5 / 12;

type Allowed = { readonly volts: number; readonly book: string };

/** The limit of the harness's settings, but never so small that no workshop would act on it. */
function allowed(context: Context, load: ContactKey): Allowed {
  const { systemVoltage_V, dropOther_percent } = context.harness.settings;
  const { part, contact } = refOfKey(load);
  const point = context.points.pointAt(part, contact);
  const trouble_V = systemVoltage_V * TROUBLE_share;
  // What an amplifier is stated to take it takes at full power only.
  if (point && context.moduleOf(point)?.role === "amplifier")
    return {
      volts: Math.max(trouble_V, (systemVoltage_V * dropOther_percent) / 100),
      book: "the harness's settings, for what is drawn at times",
    };
  const limit = dropLimit(context.harness, load);
  return limit.value >= trouble_V
    ? { volts: limit.value, book: limit.source }
    : { volts: trouble_V, book: "0.5 V in a 12 V system: AC 43.13-1B and workshop manuals" };
}

type Lost = {
  readonly load: ContactKey;
  readonly state: KeyState;
  readonly amps: number;
  readonly volts: number;
  /** The one that loses most first. */
  readonly wires: readonly { readonly wire: Wire; readonly drop_V: number }[];
};

/** Only what is reckoned from stated lengths and sizes counts: a guess is no fault. */
function lostOn(context: Context, state: KeyState, load: ContactKey): Lost | null {
  const readings = context.solved.around(refOfKey(load).part, state);
  const path = readings && pathOf(readings, load);
  if (!path) return null;
  const wires = path.steps.flatMap((step) => {
    const wire = step.wire === null ? undefined : context.harness.wires[step.wire];
    return wire && isStated(context, wire) ? [{ wire, drop_V: step.drop_V }] : [];
  });
  const volts = wires.reduce((sum, { drop_V }) => sum + drop_V, 0);
  if (volts <= allowed(context, load).volts) return null;
  wires.sort((a, b) => b.drop_V - a.drop_V || compareNames(a.wire.designation, b.wire.designation));
  return { load, state, amps: path.amps, volts, wires };
}

/** One thin lead may starve many loads: the one that loses most is named. */
function say(context: Context, all: readonly Lost[]): Found {
  const names = new Map(all.map((one) => [one, nameLoad(context.harness, one.load)]));
  const [worst] = [...all].sort(
    (a, b) => b.volts - a.volts || compareNames(names.get(a)!, names.get(b)!),
  ) as [Lost, ...Lost[]];
  const limit = allowed(context, worst.load);
  const most = worst.wires.filter(({ drop_V }) => drop_V > worst.volts / 10).slice(0, 3);
  const shares = sayList(most.map(({ wire, drop_V }) => `${sayWire(wire)} ${digits(drop_V, 2)} V`));
  const others = all.length > 1 ? ` ${all.length - 1} more behind it lose too much as well.` : "";
  return {
    message: `The leads to ${names.get(worst)} and back lose ${digits(worst.volts, 2)} V at ${digits(worst.amps, 3)} A ${sayWhen(worst.state)}; ${digits(limit.volts, 2)} V is the most (${limit.book}). Most of it goes in ${shares}.${others}`,
    consequence: "Lamps are dim, cameras and radios drop out, motors are weak, and an amplifier clips.",
    remedy:
      "Use thicker or shorter leads on both sides, the ground too; or put a relay near the load with a thick feed of its own.",
    about: [{ wire: worst.wires[0]!.wire.id }, refOfKey(worst.load)],
  };
}

function isStated({ harness }: Context, wire: Wire): boolean {
  return wire.area_mm2 !== "unknown" && lengthOf(harness, wire) !== null;
}
