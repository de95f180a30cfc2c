import type { Cavity, End, Harness, RunId, Wire, WireId } from "../../graph/harness.ts";
import { USUAL_SLACK_percent } from "../conductor/cut-length.ts";
import type { Builder } from "./builder.ts";
import type { WireFacts } from "./built.ts";
import { insulationLimit_degC, ohmsPerMetre } from "./resistances.ts";

const LEAST_degC = -50;
const MOST_degC = 200;

/** Adds every wire whose two ends stand on contacts as a resistance. */
export function addWires(builder: Builder): ReadonlyMap<WireId, WireFacts> {
  const { harness } = builder.setting;
  const wires = new Map<WireId, WireFacts>();
  for (const wire of Object.values(harness.wires)) {
    const facts = factsOf(builder, wire);
    const from = builder.nodeOfEnd(wire.ends[0]);
    const to = builder.nodeOfEnd(wire.ends[1]);
    if (from >= 0 && to >= 0) {
      const { resistance_ohm } = facts;
      facts.element = builder.addWire(wire.id, { kind: "resistance", from, to, resistance_ohm });
    }
    wires.set(wire.id, facts);
  }
  if (wires.size > 0) builder.note("crimps-left-out", null);
  return wires;
}

type Growing = { -readonly [Key in keyof WireFacts]: WireFacts[Key] };

type Noting = Pick<Builder, "setting" | "note">;

/** What a wire is reckoned with; what is taken for granted of it is noted. Its place among the elements is left open. */
export function factsOf(builder: Noting, wire: Wire): Growing {
  const { setting } = builder;
  const { usual, harness } = setting;
  const engineSpace = wire.runs.length > 0 && inEngineBay(harness, wire);
  const bay_degC = harness.settings.electrical.engineBay_degC;
  let temperature_degC = setting.ambient_degC;
  if (engineSpace) {
    temperature_degC = Math.max(temperature_degC, bay_degC === "unknown" ? usual.engineBay_degC : bay_degC);
    if (bay_degC === "unknown") builder.note("wire-in-engine-bay", wire.id, usual.engineBay_degC);
  }
  temperature_degC = Math.min(MOST_degC, Math.max(LEAST_degC, temperature_degC));
  const material = wire.material === "unknown" ? "copper" : wire.material;
  if (wire.material === "unknown") builder.note("wire-metal", wire.id);
  const stated_degC = insulationLimit_degC(wire.insulation);
  if (stated_degC === null) builder.note("wire-insulation", wire.id, usual.insulationLimit_degC);
  const area_mm2 = wire.area_mm2 === "unknown" ? assumedArea(builder, wire) : wire.area_mm2;
  const length_m = wire.length_m === "unknown" ? assumedLength(builder, wire) : wire.length_m;
  const limit_degC = stated_degC ?? usual.insulationLimit_degC;
  return {
    area_mm2,
    length_m,
    temperature_degC,
    material,
    limit_degC,
    engineSpace,
    element: -1,
    kind: kindOf(area_mm2, material, limit_degC, engineSpace),
    // Sizes that no wire has are drawn now and then; the sums hold to what a table can say.
    resistance_ohm: ohmsPerMetre(Math.max(area_mm2, 0.001), temperature_degC, material) * length_m,
  };
}

function inEngineBay(harness: Pick<Harness, "runs">, wire: Wire): boolean {
  return wire.runs.some((id) => harness.runs[id]?.zone === "engine-bay");
}

function assumedArea(builder: Noting, wire: Wire): number {
  for (const end of wire.ends) {
    const area_mm2 = cavityAt(builder.setting.harness, end)?.lead?.area_mm2;
    if (typeof area_mm2 !== "number") continue;
    builder.note("wire-size-of-lead", wire.id, area_mm2);
    return area_mm2;
  }
  builder.note("wire-size", wire.id, builder.setting.usual.area_mm2);
  return builder.setting.usual.area_mm2;
}

function cavityAt(harness: Pick<Harness, "parts">, end: End): Cavity | undefined {
  const part = end === "loose" ? undefined : harness.parts[end.part];
  if (end === "loose" || (part?.kind !== "connector" && part?.kind !== "module")) return undefined;
  return part.cavities[end.contact - 1];
}

function assumedLength(builder: Noting, wire: Wire): number {
  const { harness, usual } = builder.setting;
  const runs_m = runsLength_m(harness, wire.runs);
  if (runs_m !== null) {
    const slack = harness.settings.electrical.slack_percent;
    const percent = slack === "unknown" ? USUAL_SLACK_percent : slack;
    builder.note("wire-length-of-runs", wire.id, percent);
    return runs_m * (1 + percent / 100);
  }
  builder.note("wire-length", wire.id, usual.length_m);
  return usual.length_m;
}

/** The runs' lengths together; `null` where there is none, or one is not known. */
export function runsLength_m(harness: Pick<Harness, "runs">, ids: readonly RunId[]): number | null {
  if (ids.length === 0) return null;
  let sum = 0;
  for (const id of ids) {
    const length_m = harness.runs[id]?.length_m;
    if (typeof length_m !== "number") return null;
    sum += length_m;
  }
  return sum;
}

const kinds = new Map<number, Map<string, string>>();

/** One text for all wires that a book of ampacity cannot tell apart: made once, so that it is compared by identity. */
function kindOf(area_mm2: number, material: string, limit_degC: number, engineSpace: boolean): string {
  let ofArea = kinds.get(area_mm2);
  if (!ofArea) {
    if (kinds.size > 2000) kinds.clear();
    ofArea = new Map();
    kinds.set(area_mm2, ofArea);
  }
  const rest = engineSpace ? limit_degC + 1000 : limit_degC;
  const key = material === "copper" ? (PLAIN[rest] ?? `copper ${rest}`) : `${material} ${rest}`;
  let kind = ofArea.get(key);
  if (kind === undefined) {
    kind = `${area_mm2} ${key}`;
    ofArea.set(key, kind);
  }
  return kind;
}

/** Texts of the usual insulations, so that none is put together for each wire. */
const PLAIN: Readonly<Record<number, string>> = Object.fromEntries(
  [85, 105, 125, 180].flatMap((limit) => [limit, limit + 1000].map((rest) => [rest, `copper ${rest}`])),
);
