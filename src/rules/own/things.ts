import type { Cable, Harness, Part, Run, Wire } from "../../graph/harness.ts";
import type { OWN_RULE_THINGS } from "../../graph/schema/rules.ts";
import type { Context } from "../context.ts";
import type { About } from "../rule.ts";
import { compareNames, sayWire } from "../words.ts";

export type ThingKind = (typeof OWN_RULE_THINGS)[number];

/** One thing that a rule of a person's own looks at. */
export type Thing =
  | { readonly kind: "wire"; readonly wire: Wire }
  | { readonly kind: "run"; readonly run: Run }
  | { readonly kind: "cable"; readonly cable: Cable }
  | { readonly kind: Exclude<ThingKind, "wire" | "run" | "cable">; readonly part: Part };

const KIND_OF_PART: Readonly<Partial<Record<Part["kind"], Exclude<ThingKind, "wire" | "run" | "cable">>>> = {
  splice: "joint",
  cap: "cap",
  connector: "connector",
  ground: "ground",
  fuse: "fuse",
  relay: "relay",
  module: "unit",
};

/** What each kind of thing is called in a form, one and several. */
export const THING_WORDS: Readonly<Record<ThingKind, readonly [string, string]>> = {
  wire: ["wire", "wires"],
  joint: ["joint", "joints"],
  cap: ["cap", "caps"],
  connector: ["connector", "connectors"],
  ground: ["ground", "grounds"],
  fuse: ["fuse", "fuses"],
  relay: ["relay", "relays"],
  run: ["run", "runs"],
  cable: ["cable", "cables"],
  unit: ["unit", "units"],
};

/** Everything of a kind in a harness, in the order of designations. */
export function thingsOf(context: Context, kind: ThingKind): readonly Thing[] {
  const { harness } = context;
  const made: Thing[] =
    kind === "wire"
      ? Object.values(harness.wires).map((wire) => ({ kind, wire }))
      : kind === "run"
        ? Object.values(harness.runs).map((run) => ({ kind, run }))
        : kind === "cable"
          ? Object.values(harness.cables).map((cable) => ({ kind, cable }))
          : context.parts.flatMap((part) => (KIND_OF_PART[part.kind] === kind ? [{ kind, part }] : []));
  return made.sort((a, b) => compareNames(designationOf(a), designationOf(b)));
}

export function designationOf(thing: Thing): string {
  if (thing.kind === "wire") return thing.wire.designation;
  if (thing.kind === "run") return thing.run.designation;
  return thing.kind === "cable" ? thing.cable.designation : thing.part.designation;
}

/** "joint XJ3", "W4 (red)". */
export function sayThing(thing: Thing): string {
  return thing.kind === "wire"
    ? sayWire(thing.wire)
    : `${THING_WORDS[thing.kind][0]} ${designationOf(thing)}`;
}

/** What is shown on the drawing for it: a run or a cable by the wires in it; none where it holds none. */
export function aboutThing(harness: Pick<Harness, "wires">, thing: Thing): readonly About[] {
  if (thing.kind === "wire") return [{ wire: thing.wire.id }];
  if (thing.kind === "run")
    return Object.values(harness.wires)
      .filter((wire) => wire.runs.includes(thing.run.id))
      .map(({ id }) => ({ wire: id }));
  if (thing.kind === "cable")
    return thing.cable.wires.filter((id) => harness.wires[id]).map((id) => ({ wire: id }));
  return [{ part: thing.part.id }];
}
