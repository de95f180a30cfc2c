import type { Point, PointCircuit } from "../../electrical/points.ts";
import { sameEnd } from "../../graph/contacts.ts";
import { join } from "../../graph/edits/join.ts";
import { capSpares } from "../../graph/edits/lead.ts";
import type { ContactRef, Splice, Wire } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { type Fix, fixWith } from "../rule.ts";
import { nameAndPurpose, nameOf, sayPoint, sayWire } from "../words.ts";

/** A wire with a loose end, or one that ends in a joint by itself, in the words that its two rules share. */
export type LooseLead = {
  readonly wire: Wire;
  /** "ends loose", or in which joint it ends that holds nothing else. */
  readonly ends: string;
  readonly circuit: PointCircuit | null;
  /** Both ends are loose. */
  readonly isStock: boolean;
  readonly isLive: boolean;
  /** It comes from a cavity that a person has marked as a spare: `spare-not-capped` speaks of it. */
  readonly isSpare: boolean;
  readonly name: string;
  /** "X2.12 constant feed". */
  readonly from: string;
  /** " X1.A4 constant feed wants it." or nothing. */
  readonly wish: string;
  readonly remedy: string;
  readonly fix: Fix | null;
};

export function* looseLeads(context: Context): Iterable<LooseLead> {
  for (const { loose } of context.traced.circuits) {
    for (const id of loose) yield tell(context, context.harness.wires[id]!, null);
  }
  for (const { wire, joint } of context.deadEnds) yield tell(context, wire, joint);
}

function tell(context: Context, wire: Wire, joint: Splice | null): LooseLead {
  const held = wire.ends.filter((end) => end !== "loose").find((end) => end.part !== joint?.id);
  const name = sayWire(wire);
  const ends = joint ? `ends in ${joint.designation}, which holds nothing else` : "ends loose";
  const nowhere = { wire, ends, circuit: null, isLive: false, isSpare: false, name, from: "", wish: "" };
  if (!held) return { ...nowhere, isStock: true, remedy: "", fix: null };
  const circuit = context.points.circuitAt(held.part, held.contact);
  const point = context.points.pointAt(held.part, held.contact);
  const holder = context.harness.parts[held.part];
  const isSpare = point !== undefined && context.isLeftOut(point);
  const partner = point && context.unjoined.partnerOf.get(point);
  const from = point ? nameAndPurpose(point) : (holder?.designation ?? "");
  const fix = joint
    ? null
    : isSpare
      ? fixWith(`Cap ${wire.designation}`, () => capSpares(context.harness, [{ wire: wire.id }]))
      : point && partner && isJoinable(circuit, point, held)
        ? fixWith(`Join ${nameOf(point)} to ${nameOf(partner)}`, () =>
            join(context.harness, point.at, partner.at),
          )
        : null;
  return {
    wire,
    ends,
    circuit,
    isStock: false,
    isLive: context.feeds.isLive(circuit),
    isSpare,
    name,
    from,
    wish: partner ? ` ${sayPoint(context, partner)} waits for it.` : "",
    remedy: partner
      ? `Join it to ${nameOf(partner)}; if it is not wanted, cap it and mark the cavity as a spare.`
      : "Join it, or put a cap on it and mark its cavity as a spare.",
    fix,
  };
}

/** The lead that joining takes up: one that leaves the cavity itself, and no other hangs beside it. */
function isJoinable(circuit: PointCircuit, point: Point, held: ContactRef): boolean {
  return sameEnd(held, point.at) && circuit.circuit.loose.length === 1;
}
