import { digits } from "../../../electrical/figure.ts";
import type { Point } from "../../../electrical/points.ts";
import { keyOfEnd } from "../../../graph/contacts.ts";
import type { Wire } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Found } from "../../rule.ts";
import { type Bus, canBuses, isCan, isHigh, isLow } from "../../shared/data-lines.ts";
import { lengthOf, walkLeads } from "../../shared/lead-walk.ts";
import { byName, compareNames, nameOf, sayList, sayWire } from "../../words.ts";

/** The two leads of a pair may differ by less than this. @source a workshop manual on data-bus repairs */
const MOST_DIFFERENCE_m = 0.1;
const TWISTED = new Set(["twisted-pair", "shielded-pair"]);

export default defineRule({
  meta: {
    id: "can-pair-untwisted",
    group: "data",
    severity: "weak",
    summary: "The two leads of a CAN pair are twisted with each other up to the housing, and equally long.",
    source:
      "two workshop manuals on data-bus repairs: untwisted for at most 80 to 100 mm at a connector, lengths within 100 mm, no lead by another way",
    reads: [...CIRCUITS, ...NAMES, "cables", "lengths", "runs", "settings"],
    fixable: false,
    brings: ["pair-lengths-differ"],
  },
  *check(context) {
    const buses = canBuses(context);
    if (!buses.length) return;
    const partnersOf = twistedWith(context);
    const told = new Set<number>();
    for (const bus of buses) {
      if (told.has(bus.high.circuit.id)) continue;
      told.add(bus.high.circuit.id);
      if (!joinsTwoBoxes(bus)) continue;
      const found = untwisted(context, bus, partnersOf) ?? apart(context, bus) ?? unequal(context, bus);
      if (found) yield found;
    }
  },
});

function joinsTwoBoxes({ high, low }: Bus): boolean {
  const units = (points: readonly Point[]) => new Set(points.filter(isCan).map((point) => point.unit));
  return units(high.points).size > 1 && units(low.points).size > 1;
}

/** By wire: the wires that it is twisted with. */
function twistedWith({ harness }: Context): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const cable of Object.values(harness.cables)) {
    if (!TWISTED.has(cable.kind)) continue;
    for (const wire of cable.wires) {
      const others = found.get(wire) ?? new Set<string>();
      for (const other of cable.wires) if (other !== wire) others.add(other);
      found.set(wire, others);
    }
  }
  return found;
}

function wiresOf(
  context: Context,
  bus: Bus,
): { readonly high: readonly Wire[]; readonly low: readonly Wire[] } {
  const of = (ids: readonly string[]) =>
    ids
      .map((id) => context.harness.wires[id as Wire["id"]]!)
      .sort((a, b) => compareNames(a.designation, b.designation));
  return { high: of(bus.high.circuit.wires), low: of(bus.low.circuit.wires) };
}

function untwisted(
  context: Context,
  bus: Bus,
  partnersOf: ReadonlyMap<string, ReadonlySet<string>>,
): Found | null {
  const { value, book } = context.profile.limits.untwisted_mm;
  const { high, low } = wiresOf(context, bus);
  const straight = (wires: readonly Wire[], others: readonly Wire[]) =>
    wires.filter((wire) => !others.some((other) => partnersOf.get(wire.id)?.has(other.id)));
  const bare = { high: straight(high, low), low: straight(low, high) };
  for (const wires of [bare.high, bare.low]) {
    const longest_m = longestWay(context, wires);
    if (longest_m === null || longest_m * 1000 <= value + 1e-6) continue;
    const all = [...bare.high, ...bare.low];
    return {
      message: `${sayList(all.map(sayWire))} ${all.length === 1 ? "is a lead" : "are leads"} of a CAN pair and ${all.length === 1 ? "is" : "are"} not twisted with the other lead over ${digits(longest_m * 1000, 3)} mm; ${value} mm ${value === 1 ? "is" : "are"} allowed (${book}).`,
      consequence:
        "What lies beside it couples into one lead more than into the other: faults that come and go.",
      remedy:
        "Twist the two leads together up to the housings, and renew the pair as a whole rather than one lead of it.",
      about: all.map((wire) => ({ wire: wire.id })),
    };
  }
  return null;
}

/** The longest way along wires that hang together, metres; `null` where not one of them has a stated length. */
function longestWay(context: Context, wires: readonly Wire[]): number | null {
  let longest: number | null = null;
  const at = new Map<string, Wire[]>();
  for (const wire of wires) {
    for (const end of wire.ends) {
      const key = end === "loose" ? null : placeOf(context, end.part, keyOfEnd(end)!);
      if (key === null) continue;
      const here = at.get(key);
      if (here) here.push(wire);
      else at.set(key, [wire]);
    }
  }
  const farthest = (start: string): { readonly key: string; readonly length_m: number } => {
    let best = { key: start, length_m: 0 };
    const seen = new Set([start]);
    const queue = [best];
    for (let next = 0; next < queue.length; next++) {
      const here = queue[next]!;
      if (here.length_m > best.length_m) best = here;
      for (const wire of at.get(here.key) ?? []) {
        for (const end of wire.ends) {
          const key = end === "loose" ? null : placeOf(context, end.part, keyOfEnd(end)!);
          if (key === null || seen.has(key)) continue;
          seen.add(key);
          queue.push({ key, length_m: here.length_m + (lengthOf(context.harness, wire) ?? 0) });
        }
      }
    }
    return best;
  };
  for (const wire of wires) {
    if (lengthOf(context.harness, wire) === null) continue;
    const [end] = wire.ends.filter((one) => one !== "loose");
    if (!end) continue;
    // Twice to the farthest place is the longest way of a tree, and a bus is one.
    const first = farthest(placeOf(context, end.part, keyOfEnd(end)!));
    longest = Math.max(longest ?? 0, farthest(first.key).length_m);
  }
  return longest;
}

/** Both sides of a joint are one place. */
function placeOf(context: Context, part: keyof typeof context.harness.parts, key: string): string {
  return context.harness.parts[part]?.kind === "splice" ? part : key;
}

/** In one cable, and yet each in other runs than its partner. */
function apart(context: Context, bus: Bus): Found | null {
  const { high, low } = wiresOf(context, bus);
  for (const one of high) {
    if (!one.runs.length) continue;
    for (const other of low) {
      if (!other.runs.length || !sameParts(one, other)) continue;
      const differ =
        one.runs.length !== other.runs.length || one.runs.some((run) => !other.runs.includes(run));
      if (!differ) continue;
      return {
        message: `${sayWire(one)} and ${sayWire(other)} are a CAN pair and lie in different runs.`,
        consequence: "The loop between them picks up whatever lies there: faults that come and go.",
        remedy: "Lay both in the same runs, twisted with each other.",
        about: [{ wire: one.id }, { wire: other.id }],
      };
    }
  }
  return null;
}

/** From the same part to the same part; joints differ, as each lead has its own. */
function sameParts(a: Wire, b: Wire): boolean {
  const ends = (wire: Wire) => wire.ends.map((end) => (end === "loose" ? end : end.part)).sort();
  const [one, other] = [ends(a), ends(b)];
  return one[0] === other[0] && one[1] === other[1];
}

/** The way from box to box by the one lead and by the other. */
function unequal(context: Context, bus: Bus): Found | null {
  const highs = bus.high.points.filter(isHigh).sort(byName);
  const lows = bus.low.points.filter(isLow).sort(byName);
  const [first] = highs;
  const start = first && lows.find((low) => low.unit === first.unit);
  if (!first || !start) return null;
  const byHigh = walkLeads(context, first.landings);
  const byLow = walkLeads(context, start.landings);
  for (const high of highs) {
    const low = lows.find((one) => one.unit === high.unit);
    if (high.unit === first.unit || !low) continue;
    const [one, other] = [byHigh.get(high.key), byLow.get(low.key)];
    if (!one?.isKnown || !other?.isKnown) continue;
    const difference_m = Math.abs(one.length_m - other.length_m);
    if (difference_m < MOST_DIFFERENCE_m - 1e-9) continue;
    return {
      message: `The leads of a CAN pair differ in length by ${digits(difference_m * 1000, 3)} mm: ${digits(one.length_m * 1000, 3)} mm from ${nameOf(first)} to ${nameOf(high)}, ${digits(other.length_m * 1000, 3)} mm from ${nameOf(start)} to ${nameOf(low)}.`,
      consequence:
        "The two halves of a message arrive one after the other, and what does not fit is not twisted: faults that come and go.",
      remedy: "Cut both leads to one length, less than 100 mm apart, and twist them.",
      about: [high.at, low.at],
    };
  }
  return null;
}
