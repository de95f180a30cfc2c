import type { Harness, Part, PartKind, Wire } from "../graph/harness.ts";
import { FACETS, type Facet } from "./facets.ts";

type Fields<T> = { readonly [Field in Exclude<keyof T, "id">]-?: Facet | readonly Facet[] };
type PartFields = { readonly [K in PartKind]: Fields<Omit<Extract<Part, { kind: K }>, "kind" | Common>> };
type Common = "designation" | "name" | "note";

const COMMON: Readonly<Record<Common, Facet>> = { designation: "designations", name: "notes", note: "notes" };

/** Which facet every field of a part belongs to. The compiler asks for each field of the format. */
const OF_PART: PartFields = {
  connector: {
    belongsTo: "functions",
    gender: "housings",
    form: "functions",
    shell: "housings",
    keying: "housings",
    view: "housings",
    rows: "housings",
    // Cavities are told apart field by field below.
    cavities: [],
    chart: "housings",
    matedWith: "wiring",
    cover: "functions",
  },
  splice: { method: "joints", cover: "joints", zone: "joints", liveHalf: "joints", barrel: "joints" },
  cap: { method: "joints" },
  ground: { where: "joints", surface: "joints", serves: "joints" },
  supply: {
    voltage_V: "ratings",
    capacity_Ah: "ratings",
    resistance_ohm: "ratings",
    cover: "joints",
    sensor: "functions",
  },
  fuse: { rating_A: "ratings", form: "ratings", holder: "joints" },
  relay: { poles: "parts", suppression: "ratings", coil_ohm: "ratings", rating_A: "ratings" },
  switch: { operatedBy: "functions", rating_A: "ratings" },
  diode: { rating_A: "ratings" },
  resistor: { resistance_ohm: "ratings", power_W: "ratings" },
  capacitor: { capacitance_uF: "ratings" },
  load: {
    type: "functions",
    function: "functions",
    current_A: "ratings",
    behaviour: "ratings",
    standby_A: "ratings",
    polarised: "functions",
    voltage_V: "ratings",
    video: "functions",
  },
  speaker: { position: "functions", type: "functions", impedance_ohm: "ratings", power_W: "ratings" },
  module: {
    role: "functions",
    side: "functions",
    cavities: [],
    outputs: "functions",
    leastLoad_ohm: "ratings",
    channelPower_W: "ratings",
    standby_A: "ratings",
    feedsCrossed: "functions",
    wakes: "functions",
    sleeps: "functions",
    voltage_V: "ratings",
    video: "functions",
    signalGround: "functions",
    near: "functions",
    switches: "functions",
  },
};

const OF_CAVITY: Fields<import("../graph/harness.ts").Cavity> = {
  label: "parts",
  function: "functions",
  text: "notes",
  direction: "functions",
  lead: ["colours", "sizes", "parts"],
  use: "functions",
  current_A: "ratings",
  fuse_A: "ratings",
  gives: "functions",
  actsOn: "functions",
};

const OF_WIRE: Fields<Wire> = {
  designation: "designations",
  ends: "wiring",
  colour: "colours",
  area_mm2: "sizes",
  length_m: "lengths",
  material: "materials",
  insulation: "materials",
  strands: "materials",
  label: "labels",
  runs: "runs",
  note: "notes",
};

/** Every field with its facets, for a test that holds what rules really read against what they say. */
export const FIELD_FACETS = { part: OF_PART, common: COMMON, cavity: OF_CAVITY, wire: OF_WIRE } as const;

type Plain = Readonly<Record<string, unknown>>;

/**
 * The facets in which two versions of a document differ. The document shares what an edit did not touch, so this
 * looks only at what is another object.
 */
export function changedFacets(before: Harness, after: Harness): ReadonlySet<Facet> {
  if (before === after) return new Set();
  const changed = new Set<Facet>();
  if (before.parts !== after.parts) compareParts(before, after, changed);
  if (before.wires !== after.wires) compareWires(before, after, changed);
  if (before.cables !== after.cables) changed.add("cables");
  if (before.runs !== after.runs) changed.add("runs");
  if (before.settings !== after.settings) changed.add("settings");
  if (before.titleBlock !== after.titleBlock) changed.add("title");
  if (before.testRecord !== after.testRecord || before.photos !== after.photos) changed.add("tests");
  return changed;
}

/** Everything: what a first check reads. */
export const ALL_FACETS: ReadonlySet<Facet> = new Set(FACETS);

function compareParts(before: Harness, after: Harness, changed: Set<Facet>): void {
  let kept = 0;
  for (const [id, part] of Object.entries(after.parts)) {
    const old = before.parts[part.id];
    if (!old) {
      add(changed, ["parts", "designations"]);
      continue;
    }
    kept++;
    if (old === part) continue;
    if (old.kind !== part.kind) add(changed, FACETS);
    else {
      compare(old, part, { ...COMMON, ...(OF_PART[part.kind] as Record<string, Facet>) }, changed);
      if ("cavities" in part && "cavities" in old) compareCavities(old.cavities, part.cavities, changed);
    }
    if (id !== part.id) add(changed, FACETS);
  }
  if (kept !== Object.keys(before.parts).length) add(changed, ["parts", "designations"]);
}

function compareCavities(old: readonly Plain[], now: readonly Plain[], changed: Set<Facet>): void {
  if (old.length !== now.length) add(changed, ["parts", "functions", "ratings", "colours", "sizes"]);
  for (const [index, cavity] of now.entries()) {
    const was = old[index];
    if (was && was !== cavity) compare(was, cavity, OF_CAVITY as Record<string, Facet>, changed);
  }
}

function compareWires(before: Harness, after: Harness, changed: Set<Facet>): void {
  let kept = 0;
  for (const wire of Object.values(after.wires)) {
    const old = before.wires[wire.id];
    if (!old) {
      add(changed, OF_NEW_WIRE);
      continue;
    }
    kept++;
    if (old !== wire) compare(old, wire, OF_WIRE as Record<string, Facet>, changed);
  }
  if (kept !== Object.keys(before.wires).length) add(changed, OF_NEW_WIRE);
}

const OF_NEW_WIRE: readonly Facet[] = [
  "wiring",
  "designations",
  "colours",
  "sizes",
  "lengths",
  "materials",
  "labels",
  "runs",
];

function compare(
  old: Plain,
  now: Plain,
  fields: Readonly<Record<string, Facet | readonly Facet[]>>,
  changed: Set<Facet>,
): void {
  for (const [field, facet] of Object.entries(fields)) {
    if (old[field] === now[field]) continue;
    add(changed, typeof facet === "string" ? [facet] : facet);
  }
}

function add(changed: Set<Facet>, facets: readonly Facet[]): void {
  for (const facet of facets) changed.add(facet);
}
