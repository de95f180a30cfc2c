import type { Point, PointCircuit } from "../../electrical/points.ts";
import type { Relay } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { compareNames } from "../words.ts";
import { pullsToGround } from "./near.ts";
import { zoneFrom } from "./zone.ts";

/** A relay with the circuits of its contacts. Names of the terminals: DIN 72552. */
export type Wired = {
  readonly relay: Relay;
  readonly c30: PointCircuit;
  readonly c85: PointCircuit;
  readonly c86: PointCircuit;
  readonly c87: PointCircuit;
  /** Of 87a or 87b, whichever it has. */
  readonly fifth: PointCircuit | null;
};

/** Every relay, by designation. */
export function wiredRelays(context: Context): readonly Wired[] {
  return context.parts
    .filter((part): part is Relay => part.kind === "relay")
    .sort((a, b) => compareNames(a.designation, b.designation))
    .map((relay) => {
      const at = (contact: number) => context.points.circuitAt(relay.id, contact);
      return {
        relay,
        c30: at(1),
        c85: at(2),
        c86: at(3),
        c87: at(4),
        fifth: relay.poles === "make" ? null : at(5),
      };
    });
}

/** A contact of the relay, by its number. */
export function contactOf(context: Context, relay: Relay, contact: number): Point {
  return context.points.pointAt(relay.id, contact)!;
}

/** Something lands on it. */
export function isUsed({ circuit }: PointCircuit): boolean {
  return circuit.wires.length > 0;
}

/** On ground, or pulled there by an output or a switch. */
export function isGroundSide(context: Context, circuit: PointCircuit): boolean {
  return context.grounds.isLive(circuit) || circuit.points.some(pullsToGround);
}

export function isPlusSide(context: Context, circuit: PointCircuit): boolean {
  return context.feeds.isLive(circuit);
}

/** What feeds a circuit without passing a relay's contact. */
export function feedersOf(context: Context, circuit: PointCircuit): readonly Point[] {
  return context.feeds
    .feeds(circuit)
    .map(({ source }) => source)
    .filter((source) =>
      zoneFrom(
        context,
        context.circuitOf(source).circuit.id,
        (gate) => gate.kind !== "make" && gate.kind !== "rest",
      ).includes(circuit.circuit.id),
    );
}

/** What draws from a circuit, directly or through fuses, switches and diodes; a coil that is driven from it as well. */
export function takersOn(context: Context, circuit: PointCircuit): readonly Point[] {
  return zoneFrom(context, circuit.circuit.id, (gate) => gate.kind !== "make" && gate.kind !== "rest")
    .flatMap((id) => context.points.circuits[id]!.points)
    .filter(wantsVolts);
}

/** A load's live side, or an input that volts work. */
export function wantsVolts({ part, contact, direction, means }: Point): boolean {
  if (part.kind === "load") return contact.number === 1;
  return direction === "takes" && means.active === "supply" && contact.cavity !== null;
}
