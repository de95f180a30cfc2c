import { partnerOf } from "../../../catalogue/functions.ts";
import type { Point, PointCircuit } from "../../../electrical/points.ts";
import { contactKey } from "../../../graph/contacts.ts";
import type { End, Splice, Wire, WireId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Cores, cablesOf, circuitOfWire } from "../../shared/cables.ts";
import { byName, compareNames, sayPoint, sayWire } from "../../words.ts";

/** A stretch of a signal lead without its shield that is longer than any making-off of ends. */
const BARE_m = 0.3;

export default defineRule({
  meta: {
    id: "shield-not-carried-through",
    group: "signals",
    severity: "weak",
    summary: "Where a shielded cable is joined, its shield is joined as well.",
    source:
      "NASA-STD-8739.4 shows shield terminations as parts of their own; the rest, and 0.3 m as the longest bare stretch: common practice, no source",
    reads: [...CIRCUITS, ...NAMES, "cables", "lengths"],
    fixable: false,
    brings: ["loose-lead", "same-function-unjoined", "spare-not-capped"],
  },
  *check(context) {
    const cables = cablesOf(context).filter((one): one is Shielded => one.shield !== null);
    if (!cables.length) return;
    const told = new Set<string>();
    for (const [a, b, circuit] of neighbours(context, cables)) {
      const pair = `${a.cable.id} ${b.cable.id}`;
      if (told.has(pair)) continue;
      if (isCarried(context, a, b)) continue;
      told.add(pair).add(a.cable.id).add(b.cable.id);
      yield {
        message: `${a.cable.designation} and ${b.cable.designation} are joined, at ${placeOf(context, circuit)}, and their shields ${sayWire(a.shield)} and ${sayWire(b.shield)} are not.`,
        consequence:
          "Behind the joint the lead hears everything around it: noise, a poor picture, poor reception.",
        remedy: "Carry the shield across the joint on a lead of its own, as short as the cores.",
        about: [{ wire: a.shield.id }, { wire: b.shield.id }],
      };
    }
    const shielded = new Set<WireId>(cables.flatMap(({ cores }) => cores.map(({ id }) => id)));
    for (const one of cables) {
      const bare = bareBeyond(context, one, shielded);
      if (!bare || told.has(one.cable.id)) continue;
      told.add(one.cable.id);
      yield {
        message: `${one.cable.designation} ends at ${bare.joint.designation}; the signal goes on in ${sayWire(bare.wire)} for ${bare.length_m} m, and the shield ${sayWire(one.shield)} does not.`,
        consequence:
          "Behind the joint the lead hears everything around it: noise, a poor picture, poor reception.",
        remedy: "Go on in shielded cable, and carry the shield across the joint on a lead of its own.",
        about: [{ wire: one.shield.id }, { wire: bare.wire.id }, { part: bare.joint.id }],
      };
    }
    for (const one of cables) {
      const broken = told.has(one.cable.id) ? null : brokenReturn(context, one);
      if (!broken) continue;
      yield {
        message: `${one.cable.designation} brings ${sayPoint(context, broken.signal)} to its other end, and its shield ${sayWire(one.shield)}, which is the return, does not reach ${sayPoint(context, broken.missed)}.`,
        consequence:
          "The signal finds its way back by the frame, and brings along what flows there: hum, a torn picture.",
        remedy: "Carry the shield through to the contact that is for it, across every joint on the way.",
        about: [{ wire: one.shield.id }, broken.missed.at],
      };
    }
  },
});

type Shielded = Cores & { readonly shield: Wire };

const SIGNALS = new Set(["line-level", "video", "data", "antenna"]);

/** Pairs of cables of which a core of one is a core of the other's circuit. */
function* neighbours(
  context: Context,
  cables: readonly Shielded[],
): Iterable<readonly [Shielded, Shielded, PointCircuit]> {
  const byCircuit = new Map<PointCircuit, Shielded[]>();
  for (const one of cables) {
    for (const core of one.cores) {
      const circuit = circuitOfWire(context, core);
      if (!circuit?.points.some(({ means }) => SIGNALS.has(means.group))) continue;
      const list = byCircuit.get(circuit);
      if (!list) byCircuit.set(circuit, [one]);
      else if (!list.includes(one)) list.push(one);
    }
  }
  for (const [circuit, list] of byCircuit)
    for (const [index, a] of list.entries()) for (const b of list.slice(index + 1)) yield [a, b, circuit];
}

/** Their shields are one, or each of two pairs has its shield on a ground. */
function isCarried(context: Context, a: Shielded, b: Shielded): boolean {
  const [one, other] = [circuitOfWire(context, a.shield), circuitOfWire(context, b.shield)];
  if (one === other) return one !== null;
  if (a.cores.length < 2 || b.cores.length < 2) return false;
  return [one, other].every((circuit) => circuit !== null && context.grounds.isLive(circuit));
}

/** A shield that is the return of its core, and reaches the contact for it at one of the boxes only. */
function brokenReturn(
  context: Context,
  { cores, shield }: Shielded,
): { signal: Point; missed: Point } | null {
  const home = circuitOfWire(context, shield);
  if (!home) return null;
  for (const core of cores) {
    const there = circuitOfWire(context, core);
    for (const signal of [...(there?.points ?? [])].sort(byName)) {
      if (signal.means.group !== "line-level" && signal.means.group !== "video") continue;
      const partner = partnerOf(signal.means.id);
      const own = signal.unit === null ? [] : (context.points.byUnit.get(signal.unit) ?? []);
      const missed = own.find((point) => point.means.id === partner && point.part === signal.part);
      if (!missed || context.circuitOf(missed) === home || context.isLeftOut(missed)) continue;
      if (home.points.some(({ means }) => means.id === partner)) return { signal, missed };
    }
  }
  return null;
}

/** The joint in a circuit; of mated plugs, the first by name. */
function placeOf(context: Context, { circuit }: PointCircuit): string {
  const parts = circuit.contacts.flatMap((key) => context.traced.partOf(key) ?? []);
  const joints = parts.filter(({ kind }) => kind === "splice");
  return (joints.length ? joints : parts).map(({ designation }) => designation).sort(compareNames)[0]!;
}

/** The plain wire in which a signal goes on for long behind a joint where its shield ends in the air. */
function bareBeyond(
  context: Context,
  { cores, shield }: Shielded,
  shielded: ReadonlySet<WireId>,
): { wire: Wire; joint: Splice; length_m: number } | null {
  for (const core of cores) {
    const circuit = circuitOfWire(context, core);
    if (!circuit?.points.some(({ means }) => SIGNALS.has(means.group))) continue;
    for (const [index, end] of core.ends.entries()) {
      const joint = jointAt(context, end);
      if (!joint || !endsInTheAir(context, nearEnd(shield, core, index))) continue;
      const on = [1, 2]
        .flatMap((contact) => context.traced.wiresAt(contactKey(joint.id, contact)))
        .sort((a, b) => compareNames(a.designation, b.designation));
      for (const wire of on) {
        if (wire === core || shielded.has(wire.id) || wire.length_m === "unknown") continue;
        if (wire.length_m > BARE_m) return { wire, joint, length_m: wire.length_m };
      }
    }
  }
  return null;
}

function jointAt(context: Context, end: End): Splice | null {
  const part = end === "loose" ? undefined : context.harness.parts[end.part];
  return part?.kind === "splice" ? part : null;
}

/** The end of a shield beside an end of a core: the one that is not where the core's other end is. */
function nearEnd(shield: Wire, core: Wire, index: number): End {
  const far = core.ends[1 - index]!;
  const farIndex = shield.ends.findIndex(
    (end) => end !== "loose" && far !== "loose" && end.part === far.part,
  );
  return shield.ends[farIndex < 0 ? index : 1 - farIndex]!;
}

/** Loose, under a cap, or in a joint that holds nothing else. */
function endsInTheAir(context: Context, end: End): boolean {
  if (end === "loose") return true;
  const part = context.harness.parts[end.part];
  if (part?.kind === "cap") return true;
  if (part?.kind !== "splice") return false;
  return [1, 2].flatMap((contact) => context.traced.wiresAt(contactKey(part.id, contact))).length < 2;
}
