import { functionOf } from "../../catalogue/functions.ts";
import { type ContactKey, keyOfEnd, keysOf } from "../../graph/contacts.ts";
import type { Harness, Part, Wire } from "../../graph/harness.ts";
import { cable as cableShape, run as runShape, wire as wireShape } from "../../graph/schema/harness.ts";
import { part as partShape } from "../../graph/schema/parts.ts";
import { COLOUR_CODES } from "../../graph/schema/values.ts";
import type { Context } from "../context.ts";
import { runsAround } from "../shared/joints.ts";
import type { Thing, ThingKind } from "./things.ts";

/** What a thing is in one respect: a number, or one or several words; `null` where nobody has said. */
export type Value = number | readonly string[] | null;

export type Property = {
  /** As a rule names it. */
  readonly id: string;
  readonly words: string;
  readonly kind: "number" | "choice" | "text";
  /** Its unit, for a number. */
  readonly unit?: string;
  /** What it may be, for a choice. */
  readonly choices?: readonly string[];
  readonly of: (thing: never, context: Context) => Value;
};

const CARRIES = ["feed", "ground", "lighting", "control", "data", "speaker", "line-level", "video"] as const;

const one = (value: string | null | undefined): Value =>
  value === null || value === undefined || value === "" || value === "unknown" ? null : [value];
const figure = (value: number | "unknown" | null): Value => (typeof value === "number" ? value : null);
const yes = (is: boolean): Value => [is ? "yes" : "no"];
const YES_NO = ["yes", "no"] as const;

type Shape = { readonly def: { readonly entries?: Readonly<Record<string, string | number>> } };
/** The words that the format allows in a field, "unknown" left out: it says that nobody has said. */
const wordsOf = (shape: unknown): readonly string[] =>
  Object.values((shape as Shape).def.entries ?? {})
    .map(String)
    .filter((word) => word !== "unknown");

const shapes = Object.fromEntries(
  partShape.def.options.map((option) => [literalOf(option.shape.kind), option.shape]),
) as unknown as Readonly<Record<Part["kind"], Readonly<Record<string, unknown>>>>;

function literalOf(literal: { readonly def: { readonly values: readonly string[] } }): string {
  return literal.def.values[0]!;
}

type WireThing = Extract<Thing, { kind: "wire" }>;
type RunThing = Extract<Thing, { kind: "run" }>;
type CableThing = Extract<Thing, { kind: "cable" }>;
type PartThing<K extends Part["kind"]> = { readonly part: Extract<Part, { kind: K }> };

const choice = <T>(
  id: string,
  words: string,
  choices: readonly string[],
  of: (thing: T, context: Context) => Value,
): Property => ({ id, words, kind: "choice", choices, of: of as Property["of"] });
const number = <T>(
  id: string,
  words: string,
  unit: string,
  of: (thing: T, context: Context) => Value,
): Property => ({ id, words, kind: "number", unit, of: of as Property["of"] });
const text = <T>(id: string, words: string, of: (thing: T, context: Context) => Value): Property => ({
  id,
  words,
  kind: "text",
  of: of as Property["of"],
});

/** What the circuits that a wire or a part belongs to carry. */
function carried(context: Context, keys: readonly ContactKey[]): Value {
  const found = new Set<string>();
  for (const key of keys) {
    const circuit = context.traced.circuitOf(key);
    for (const { means } of circuit ? context.points.circuits[circuit.id]!.points : []) {
      const group = functionOf(means.id).group;
      if ((CARRIES as readonly string[]).includes(group)) found.add(group);
    }
  }
  return found.size ? [...found].sort() : null;
}

const endsOf = (wire: Wire): readonly ContactKey[] =>
  wire.ends.flatMap((end) => (end === "loose" ? [] : [keyOfEnd(end)!]));

function zonesOf(harness: Harness, wire: Wire): Value {
  const zones = new Set(wire.runs.map((id) => harness.runs[id]?.zone ?? "unknown"));
  zones.delete("unknown");
  return zones.size ? [...zones].sort() : null;
}

/** A joint lies where it says, else where the runs that its wires share say. */
function zonesOfJoint(context: Context, joint: PartThing<"splice">["part"]): Value {
  if (joint.zone !== "unknown") return [joint.zone];
  const wires = keysOf(joint).flatMap((key) => context.traced.wiresAt(key));
  const zones = new Set(runsAround(context, { wires }).map(({ zone }) => zone));
  return zones.size && !zones.has("unknown") ? [...zones].sort() : null;
}

const wiresAt = (context: Context, part: Part): number =>
  new Set(keysOf(part).flatMap((key) => context.traced.wiresAt(key))).size;

const WIRE: readonly Property[] = [
  choice<WireThing>("carries", "carries", CARRIES, ({ wire }, context) => carried(context, endsOf(wire))),
  choice<WireThing>("base-colour", "base colour", COLOUR_CODES, ({ wire }) => one(wire.colour?.base)),
  choice<WireThing>("tracer-colour", "tracer colour", COLOUR_CODES, ({ wire }) => one(wire.colour?.tracer)),
  number<WireThing>("size", "size", "mm²", ({ wire }) => figure(wire.area_mm2)),
  number<WireThing>("length", "length", "m", ({ wire }) => figure(wire.length_m)),
  text<WireThing>("label", "label at both ends", ({ wire }) => one(wire.label)),
  choice<WireThing>("material", "metal", wordsOf(wireShape.shape.material), ({ wire }) => one(wire.material)),
  choice<WireThing>("insulation", "insulation", wordsOf(wireShape.shape.insulation), ({ wire }) =>
    one(wire.insulation),
  ),
  choice<WireThing>("strands", "conductor", wordsOf(wireShape.shape.strands), ({ wire }) =>
    one(wire.strands),
  ),
  choice<WireThing>("zone", "zone", wordsOf(runShape.shape.zone), ({ wire }, { harness }) =>
    zonesOf(harness, wire),
  ),
];

const JOINT: readonly Property[] = [
  choice<PartThing<"splice">>("method", "kind", wordsOf(shapes.splice.method), ({ part }) =>
    one(part.method),
  ),
  choice<PartThing<"splice">>("cover", "cover", wordsOf(shapes.splice.cover), ({ part }) => one(part.cover)),
  choice<PartThing<"splice">>("zone", "zone", wordsOf(runShape.shape.zone), ({ part }, context) =>
    zonesOfJoint(context, part),
  ),
  choice<PartThing<"splice">>("carries", "carries", CARRIES, ({ part }, context) =>
    carried(context, keysOf(part)),
  ),
  number<PartThing<"splice">>("wires", "wires in it", "", ({ part }, context) => wiresAt(context, part)),
];

const CAP: readonly Property[] = [
  choice<PartThing<"cap">>("method", "kind", wordsOf(shapes.cap.method), ({ part }) => one(part.method)),
  choice<PartThing<"cap">>("carries", "carries", CARRIES, ({ part }, context) =>
    carried(context, keysOf(part)),
  ),
  number<PartThing<"cap">>("wires", "wires under it", "", ({ part }, context) => wiresAt(context, part)),
];

const CONNECTOR: readonly Property[] = [
  choice<PartThing<"connector">>("form", "form", wordsOf(shapes.connector.form), ({ part }) =>
    one(part.form),
  ),
  choice<PartThing<"connector">>("gender", "gender", wordsOf(shapes.connector.gender), ({ part }) =>
    one(part.gender),
  ),
  choice<PartThing<"connector">>("side", "side", ["vehicle", "equipment"], ({ part }) =>
    one(part.belongsTo.side),
  ),
  text<PartThing<"connector">>("shell", "shell", ({ part }) => one(part.shell)),
  text<PartThing<"connector">>("chart", "title of its chart", ({ part }) => one(part.chart?.title)),
];

const GROUND: readonly Property[] = [
  text<PartThing<"ground">>("where", "place", ({ part }) => one(part.where)),
  choice<PartThing<"ground">>("surface", "surface", wordsOf(shapes.ground.surface), ({ part }) =>
    one(part.surface),
  ),
  choice<PartThing<"ground">>("serves", "serves", wordsOf(shapes.ground.serves), ({ part }) =>
    one(part.serves),
  ),
  number<PartThing<"ground">>("wires", "wires on it", "", ({ part }, context) => wiresAt(context, part)),
];

const FUSE: readonly Property[] = [
  number<PartThing<"fuse">>("rating", "rating", "A", ({ part }) => figure(part.rating_A)),
  choice<PartThing<"fuse">>("form", "form", wordsOf(shapes.fuse.form), ({ part }) => one(part.form)),
  choice<PartThing<"fuse">>("holder", "holder", wordsOf(shapes.fuse.holder), ({ part }) => one(part.holder)),
];

const RELAY: readonly Property[] = [
  choice<PartThing<"relay">>("poles", "contacts", wordsOf(shapes.relay.poles), ({ part }) => one(part.poles)),
  choice<PartThing<"relay">>("suppression", "suppression", wordsOf(shapes.relay.suppression), ({ part }) =>
    one(part.suppression),
  ),
  number<PartThing<"relay">>("rating", "rating", "A", ({ part }) => figure(part.rating_A)),
];

const RUN: readonly Property[] = [
  choice<RunThing>("zone", "zone", wordsOf(runShape.shape.zone), ({ run }) => one(run.zone)),
  choice<RunThing>("covering", "covering", wordsOf(runShape.shape.covering), ({ run }) => one(run.covering)),
  number<RunThing>("length", "length", "m", ({ run }) => figure(run.length_m)),
  choice<RunThing>("near", "near", wordsOf(runShape.shape.near.def.element), ({ run }) =>
    run.near.length ? run.near : null,
  ),
  choice<RunThing>("hinge", "hinge", wordsOf(runShape.shape.hinge), ({ run }) => one(run.hinge)),
  number<RunThing>("support", "from clip to clip", "m", ({ run }) => figure(run.support_m)),
  choice<RunThing>("drip-loop", "drip loop", wordsOf(runShape.shape.dripLoop), ({ run }) =>
    one(run.dripLoop),
  ),
  choice<RunThing>("holes-protected", "holes protected", YES_NO, ({ run }) =>
    run.passes.length
      ? yes(run.passes.every(({ protection }) => !["none", "unknown"].includes(protection)))
      : null,
  ),
];

const CABLE: readonly Property[] = [
  choice<CableThing>("kind", "kind", wordsOf(cableShape.shape.kind), ({ cable }) => one(cable.kind)),
  choice<CableThing>("shielded", "shielded", YES_NO, ({ cable }) => yes(cable.shield !== null)),
  number<CableThing>("wires", "wires in it", "", ({ cable }) => cable.wires.length),
];

const UNIT: readonly Property[] = [
  choice<PartThing<"module">>("role", "role", wordsOf(shapes.module.role), ({ part }) => one(part.role)),
  choice<PartThing<"module">>("side", "side", ["vehicle", "equipment"], ({ part }) => one(part.side)),
  choice<PartThing<"module">>("near", "near", wordsOf(runShape.shape.near.def.element), ({ part }) =>
    part.near.length ? part.near : null,
  ),
  number<PartThing<"module">>("standby", "draws asleep", "A", ({ part }) => figure(part.standby_A)),
  choice<PartThing<"module">>("switches-set", "switches all set", YES_NO, ({ part }) =>
    part.switches.length ? yes(part.switches.every(({ position }) => position !== "unset")) : null,
  ),
];

/** What a rule of a person's own may ask of each kind of thing. */
export const PROPERTIES: Readonly<Record<ThingKind, readonly Property[]>> = {
  wire: WIRE,
  joint: JOINT,
  cap: CAP,
  connector: CONNECTOR,
  ground: GROUND,
  fuse: FUSE,
  relay: RELAY,
  run: RUN,
  cable: CABLE,
  unit: UNIT,
};

export function propertyOf(kind: ThingKind, id: string): Property | undefined {
  return PROPERTIES[kind].find((property) => property.id === id);
}

export function valueIn(property: Property, thing: Thing, context: Context): Value {
  return property.of(thing as never, context);
}
