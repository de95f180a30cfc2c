import type { ContactKey } from "../../graph/contacts.ts";
import type { Edit } from "../../graph/edits/edit.ts";
import { group } from "../../graph/edits/edit.ts";
import type { Harness, WireId } from "../../graph/harness.ts";
import { type NotSized, type Sized, sizeWire } from "../conductor/size-wire.ts";
import { AWG_STANDARD, METRIC_STANDARD, type StandardSize } from "../conductor/sizes.ts";
import { digits, isKnown } from "../figure.ts";
import { ampacityFor, bookOf, conditionsFor } from "./ampacity-of.ts";
import type { Design } from "./design.ts";
import { dropLimit, nameLoad } from "./drop.ts";
import { loadedBeside } from "./operate.ts";
import type { LoadPath } from "./path.ts";
import { BASIS } from "./resistances.ts";

export type WireSizing = {
  readonly wire: WireId;
  readonly current_A: number;
  /** What it may lose: its part of the tightest budget that it is on. `null`: on the way of no load that draws. */
  readonly allowed_V: number | null;
  /** The load whose budget that is. */
  readonly load: ContactKey | null;
  readonly stated_mm2: number | "unknown";
  readonly sized: Sized | NotSized;
  /** `keep`: as thick as it needs, or thicker. `grow`: too thin. `state`: no size was stated. `none`: no size does. */
  readonly verdict: "keep" | "grow" | "state" | "none";
  readonly why: string;
};

/** Wires that carry less than this are signals: no current asks for a size. @source common practice, no source */
const SIGNAL_A = 0.05;
/** Thinner wire is not used for current in a vehicle: it breaks at the crimp. @source common practice, no source */
const LEAST_mm2 = 0.35;
/** Where fuses, joints and switches take more than the other half, thicker wire is no cure: its wires get this share. */
const LEAST_SHARE = 0.5;

type Allowed = { readonly allowed_V: number; readonly load: ContactKey; readonly isSqueezed: boolean };

/**
 * The smallest standard size of each wire that meets ampacity and drop.
 * A budget is shared out among the wires of a path so that least copper is used: each loses in step with its length times
 * the root of its current; what fuses, joints and switches lose is taken off first.
 * @param only these wires; all that carry current where left out
 * @param least what the fuse before a wire asks of it, whatever its own current
 */
export function sizeWires(
  design: Design,
  only?: readonly WireId[],
  least?: ReadonlyMap<WireId, number>,
): readonly WireSizing[] {
  const { harness } = design;
  const allowed = shareOut(design);
  const sizes = harness.settings.sizes === "awg" ? AWG_STANDARD : METRIC_STANDARD;
  const ids = only ?? (Object.keys(harness.wires) as WireId[]);
  return ids.flatMap((id) => {
    const most = design.wires.get(id);
    if (!most || (most.amps < SIGNAL_A && !only)) return [];
    return [sizeOne(design, id, most.amps, allowed.get(id) ?? null, sizes, least?.get(id) ?? 0)];
  });
}

function sizeOne(
  design: Design,
  id: WireId,
  current_A: number,
  allowed: Allowed | null,
  sizes: readonly StandardSize[],
  forFuse_mm2: number,
): WireSizing {
  const { harness } = design;
  const { readings } = design.wires.get(id)!;
  const facts = readings.solved.built.wires.get(id)!;
  const stated = harness.wires[id]!.area_mm2;
  const { systemVoltage_V: system_V } = harness.settings;
  const conditions = conditionsFor(facts, loadedBeside(readings, id), system_V);
  const { book } = bookOf(harness.settings.electrical.ampacityBook);
  const sized = sizeWire({
    current_A,
    length_m: facts.length_m,
    drop_V: allowed?.allowed_V ?? system_V,
    system_V,
    temperature_degC: facts.temperature_degC,
    material: facts.material,
    basis: BASIS,
    // A book that is silent on thin wire does not make it thick: the next one is asked.
    book: {
      ...book,
      ampacity: (area_mm2, given) => ampacityFor(book, { area_mm2, material: "copper" }, given).answer,
      doubt: book.doubt,
    },
    conditions,
    sizes,
    least_mm2: Math.max(LEAST_mm2, forFuse_mm2),
  });
  const area_mm2 = sized.ok ? sized.size.area_mm2 : null;
  const verdict =
    area_mm2 === null ? "none" : stated === "unknown" ? "state" : stated < area_mm2 * 0.995 ? "grow" : "keep";
  const budget = allowed
    ? ` for ${nameLoad(harness, allowed.load)}${allowed.isSqueezed ? ", whose fuses, joints and switches alone take more than half of its budget" : ""}`
    : "";
  return {
    wire: id,
    current_A,
    allowed_V: allowed?.allowed_V ?? null,
    load: allowed?.load ?? null,
    stated_mm2: stated,
    sized,
    verdict,
    why: `${sized.why}${budget}${forFuse_mm2 > 0 ? `; its fuse asks for ${digits(forFuse_mm2)} mm²` : ""}`,
  };
}

/** What each wire may lose, by the tightest budget that it is on. */
function shareOut(design: Design): ReadonlyMap<WireId, Allowed> {
  const allowed = new Map<WireId, Allowed>();
  for (const { path, readings } of design.paths.values()) {
    if (path.amps < SIGNAL_A) continue;
    const limit_V = dropLimit(design.harness, path.load).value;
    const wires = path.steps.filter((step) => step.wire !== null);
    const others_V = path.steps.reduce((sum, step) => sum + (step.wire === null ? step.drop_V : 0), 0);
    const left_V = Math.max(limit_V - others_V, limit_V * LEAST_SHARE);
    const weights = wires.map(
      ({ wire, amps }) => readings.solved.built.wires.get(wire!)!.length_m * Math.sqrt(amps),
    );
    const sum = weights.reduce((total, weight) => total + weight, 0);
    wires.forEach(({ wire }, index) => {
      const allowed_V = sum > 0 ? (left_V * weights[index]!) / sum : left_V;
      const known = allowed.get(wire!);
      if (allowed_V <= 0 || (known && known.allowed_V <= allowed_V)) return;
      allowed.set(wire!, {
        allowed_V,
        load: path.load,
        isSqueezed: limit_V - others_V < limit_V * LEAST_SHARE,
      });
    });
  }
  return allowed;
}

/** The wires on the way of one load and back. */
export function wiresOnPath(path: LoadPath): readonly WireId[] {
  return path.steps.flatMap(({ wire }) => wire ?? []);
}

/**
 * The sizes as one ordinary edit.
 * @param shrink also makes wires thinner that are thicker than they need be
 * @returns `null` where nothing changes
 */
export function sizingEdit(
  harness: Pick<Harness, "wires">,
  sizings: readonly WireSizing[],
  shrink = false,
): Edit | null {
  const edits = sizings.flatMap(({ wire, sized, verdict }): Edit[] => {
    if (!sized.ok || (verdict === "keep" && !shrink)) return [];
    const { area_mm2 } = sized.size;
    if (harness.wires[wire]?.area_mm2 === area_mm2) return [];
    return [{ kind: "change-wire", wire, changes: { area_mm2 } }];
  });
  return edits.length === 0
    ? null
    : group(`size ${edits.length} ${edits.length === 1 ? "wire" : "wires"}`, edits);
}

/** What a wire of a size may carry where it lies, in the state in which it carries most; `null` where no book says. */
export function amperesOf(design: Design, id: WireId, area_mm2?: number): number | null {
  const readings = design.wires.get(id)?.readings;
  const facts = readings?.solved.built.wires.get(id);
  if (!readings || !facts) return null;
  const { book } = bookOf(design.harness.settings.electrical.ampacityBook);
  const conditions = conditionsFor(
    facts,
    loadedBeside(readings, id),
    design.harness.settings.systemVoltage_V,
  );
  const asked = { area_mm2: area_mm2 ?? facts.area_mm2, material: facts.material };
  const { answer, share } = ampacityFor(book, asked, conditions);
  return isKnown(answer) ? answer.value * share : null;
}

/** The smallest standard size that may carry a current where the wire lies; `null` where none does. */
export function sizeFor(design: Design, id: WireId, needed_A: number): StandardSize | null {
  const sizes = design.harness.settings.sizes === "awg" ? AWG_STANDARD : METRIC_STANDARD;
  return (
    sizes.find(
      ({ area_mm2 }) => area_mm2 >= LEAST_mm2 && (amperesOf(design, id, area_mm2) ?? 0) > needed_A,
    ) ?? null
  );
}
