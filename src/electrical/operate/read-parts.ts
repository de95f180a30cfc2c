import type { ContactKey } from "../../graph/contacts.ts";
import type { Harness, Part, PartId } from "../../graph/harness.ts";
import { type Blade, type BladeForm, blade } from "../fuse/blade.ts";
import { blowTime } from "../fuse/blow-time.ts";
import { CONTINUOUS_SHARE } from "../fuse/choose.ts";
import { nodesOf } from "../solve/circuit.ts";
import type { Solution } from "../solve/solve.ts";
import type { Usual } from "./assumed.ts";
import type { Built } from "./built.ts";
import type { FuseReading, LoadReading, Readings, RelayReading, SourceReading } from "./readings.ts";
import type { VoltsAt } from "./volts-at.ts";

type PartReadings = Pick<Readings, "fuses" | "relays" | "loads" | "sources">;

/** Volts against a polarised load from here on are volts the wrong way round. */
const REVERSED_V = 0.5;

export function readParts(
  harness: Harness,
  built: Built,
  solution: Solution,
  reach: VoltsAt,
  usual: Usual,
): PartReadings {
  const fuses = new Map<PartId, FuseReading>();
  const relays = new Map<PartId, RelayReading>();
  const chattering = new Set(
    solution.warnings.flatMap((one) =>
      one.kind === "relays-chatter" || one.kind === "relays-race" ? one.coils : [],
    ),
  );
  const holding = new Set(solution.warnings.flatMap((one) => (one.kind === "relays-hold" ? one.coils : [])));
  const { owners } = built;
  for (let index = 0; index < owners.role.length; index++) {
    const role = owners.role[index];
    if (role !== "fuse" && role !== "coil") continue;
    const id = owners.id[index] as PartId;
    const part = harness.parts[id]!;
    if (role === "fuse") fuses.set(id, readFuse(part, Math.abs(solution.amps[index]!)));
    else {
      const [from, to] = nodesOf(built.circuit.elements[index]!);
      relays.set(id, {
        pulled: solution.pulled[index] === 1,
        chatters: chattering.has(index),
        holds: holding.has(index),
        coil_V: Math.abs(reach.across(from, to) ?? 0),
        coil_A: Math.abs(solution.amps[index]!),
      });
    }
  }
  return {
    fuses,
    relays,
    loads: readLoads(built, solution, reach, usual),
    sources: readSources(built, solution, reach),
  };
}

/** What a fuse does at a current that stays. */
export function readFuse(part: Part, amps: number): FuseReading {
  if (part.kind !== "fuse" || part.rating_A === "unknown")
    return { amps, rating_A: null, percentOfRating: null, verdict: "unknown" };
  const { rating_A } = part;
  const share = amps / rating_A;
  return { amps, rating_A, percentOfRating: share * 100, verdict: verdictOf(bladeOf(part), share, amps) };
}

/** The standard blade that a fuse is; `null` for another form, or a rating that none is made in. */
export function bladeOf(part: Part | undefined): Blade | null {
  if (part?.kind !== "fuse" || part.rating_A === "unknown") return null;
  return part.form === "mini" || part.form === "regular" || part.form === "maxi"
    ? blade(part.form, part.rating_A)
    : null;
}

/** Where a form has no table here, the regular blade's is the nearest. */
export function formFor(part: Part): BladeForm {
  if (part.kind === "fuse" && (part.form === "mini" || part.form === "maxi")) return part.form;
  return part.kind === "fuse" && part.form === "bolt-down" ? "maxi" : "regular";
}

function verdictOf(known: Blade | null, share: number, amps: number): FuseReading["verdict"] {
  if (share <= CONTINUOUS_SHARE + 1e-9) return "holds";
  if (share <= 1 + 1e-9) return "full";
  // Every table opens a fuse at 135 %; one without a table is taken alike.
  if (!known) return share >= 1.35 ? "opens" : "may-open";
  return blowTime(known, amps).promised.most_s === "unknown" && share < 6 ? "may-open" : "opens";
}

export function readLoads(
  built: Pick<Built, "takers">,
  solution: Solution,
  reach: VoltsAt,
  usual: Usual,
): ReadonlyMap<ContactKey, LoadReading> {
  const loads = new Map<ContactKey, LoadReading>();
  for (const taker of built.takers) {
    const volts = reach.across(taker.plus, taker.minus) ?? 0;
    loads.set(taker.key, {
      part: taker.part,
      volts,
      amps: solution.amps[taker.element]!,
      stated_A: taker.stated_A,
      works: (taker.polarised ? volts : Math.abs(volts)) >= usual.works * taker.nominal_V,
      reversed: taker.polarised && volts < -REVERSED_V,
    });
  }
  return loads;
}

export function readSources(
  built: Pick<Built, "circuit" | "givers">,
  solution: Solution,
  reach: VoltsAt,
): ReadonlyMap<ContactKey, SourceReading> {
  const sources = new Map<ContactKey, SourceReading>();
  for (const giver of built.givers) {
    const element = built.circuit.elements[giver.element]!;
    const [plus] = nodesOf(element);
    const gives = element.kind === "supply" || element.kind === "output";
    const amps = gives ? solution.amps[giver.element]! : 0;
    const { limit_A, limitedBy } = giver;
    const percentOfLimit = limit_A === null || limit_A === 0 ? null : (Math.max(0, amps) / limit_A) * 100;
    sources.set(giver.key, { volts: reach.volts(plus), amps, limit_A, limitedBy, percentOfLimit });
  }
  return sources;
}
