import type { Point } from "../../../electrical/points.ts";
import { keyOfEnd } from "../../../graph/contacts.ts";
import { type Edit, group } from "../../../graph/edits/edit.ts";
import type { End, Harness, Wire, WireId } from "../../../graph/harness.ts";
import { makePart, Names } from "../../../graph/make.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule, type Fix, type Found, fixWith } from "../../rule.ts";
import { byName, nameOf, sayList, sayPoint } from "../../words.ts";

/** A lead of at most 7 in needs no fuse of its own (33 CFR 183.425(g)). */
const PIGTAIL_m = 0.178;

export default defineRule({
  meta: {
    id: "no-fuse",
    group: "protection",
    severity: "danger",
    summary: "Between every supply and what it feeds stands a fuse.",
    source: "33 CFR 183.455(a), with the exemption of 183.425(g) for leads under 7 in; FCS 1362:2010 §4.6.3",
    reads: [...CIRCUITS, ...NAMES, "lengths"],
    fixable: true,
  },
  *check(context) {
    const seen = new Set<number>();
    const bare = context.points.all.filter(isBareSupply).sort(byName);
    for (const source of bare) {
      const start = context.circuitOf(source).circuit.id;
      if (seen.has(start)) continue;
      const zone = unfusedZone(context, start, seen);
      const found = judge(context, source, zone);
      if (found) yield found;
    }
  },
});

/** The battery's plus, or a cavity of which the chart says that nothing protects it on the far side. */
function isBareSupply(point: Point): boolean {
  if (point.direction !== "gives" || point.means.group !== "feed") return false;
  return point.part.kind === "supply" || point.contact.cavity?.fuse_A === null;
}

/** The circuits that current reaches from here before it meets a fuse. */
function unfusedZone(context: Context, start: number, seen: Set<number>): readonly number[] {
  const zone = [start];
  seen.add(start);
  for (let next = 0; next < zone.length; next++) {
    for (const { to, gate } of context.ways[zone[next]!] ?? []) {
      if (gate.kind === "fuse" || seen.has(to)) continue;
      seen.add(to);
      zone.push(to);
    }
  }
  return zone;
}

const PASSED_THROUGH = new Set(["fuse", "supply", "switch", "diode", "resistor", "capacitor"]);

/** DIN 72552 names of a relay's coil; its other contacts only pass current on. */
const COIL = new Set(["85", "86"]);

/** What ends an unfused way: something that draws, or a way out of the harness. */
function isFed(point: Point): boolean {
  if (isBareSupply(point) || PASSED_THROUGH.has(point.part.kind)) return false;
  // A starter's cable has no fuse anywhere (33 CFR 183.425(g) excepts cranking conductors).
  if (point.part.kind === "load" && point.part.type === "motor" && point.means.id === "starter-signal")
    return false;
  return point.part.kind !== "relay" || COIL.has(point.contact.label);
}

function judge(context: Context, source: Point, zone: readonly number[]): Found | null {
  const circuits = zone.map((id) => context.points.circuits[id]!);
  const fed = circuits
    .flatMap(({ points }) => points.filter((point) => isFed(point) && point.direction !== "gives"))
    .sort(byName);
  const wires = circuits.flatMap(({ circuit }) => circuit.wires);
  if (!fed.length || !wires.length || isPigtail(context, wires)) return null;
  const names = sayList(fed.map(nameOf));
  return {
    message: `No fuse stands between ${sayPoint(context, source)} and ${names}.`,
    consequence:
      "Where the wire chafes through, nothing stops the current: it glows, and what is around it burns.",
    remedy: `Put a fuse as close to ${nameOf(source)} as can be, no bigger than the thinnest wire behind it bears.`,
    about: [source.at, ...fed.map((point) => point.at)],
    // A second source would go on feeding the same leads from its side.
    fix: circuits.some(({ points }) => points.some((point) => point !== source && isBareSupply(point)))
      ? null
      : fuseFix(context, source),
  };
}

function isPigtail(context: Context, wires: readonly WireId[]): boolean {
  let sum_m = 0;
  for (const id of wires) {
    const length_m = context.harness.wires[id]?.length_m ?? "unknown";
    if (length_m === "unknown") return false;
    sum_m += length_m;
  }
  return sum_m <= PIGTAIL_m;
}

/** Only where one wire leaves the source and nothing is plugged onto it: then the fuse has one place to go. */
function fuseFix(context: Context, source: Point): Fix | null {
  const [wire, second] = context.points.wiresAt(source);
  if (!wire || second || isPluggedOnto(context, source)) return null;
  return fixWith(`Put a fuse into ${wire.designation} at ${nameOf(source)}`, () =>
    fuseInto(context.harness, wire, source),
  );
}

function isPluggedOnto(context: Context, { part }: Point): boolean {
  if (part.kind !== "connector") return false;
  return (
    part.matedWith !== null ||
    context.parts.some((other) => other.kind === "connector" && other.matedWith === part.id)
  );
}

/** Cuts the wire at the source and puts a fuse there; its rating is left for the sizing to say. */
function fuseInto(harness: Harness, wire: Wire, source: Point): Edit {
  const names = new Names(harness);
  const fuse = makePart("fuse", names.part(), names.designation("fuse"));
  const isNear = (end: End) => keyOfEnd(end) === source.key;
  const lead: Wire = {
    ...wire,
    id: names.wire(),
    designation: names.wireDesignation(),
    length_m: "unknown",
    ends: [wire.ends.find(isNear)!, { part: fuse.id, contact: 1 }],
  };
  const ends = wire.ends.map((end): End => (isNear(end) ? { part: fuse.id, contact: 2 } : end)) as [End, End];
  return group(`put fuse ${fuse.designation} into ${wire.designation}`, [
    { kind: "add-part", part: fuse, place: null },
    { kind: "change-wire", wire: wire.id, changes: { ends } },
    { kind: "add-wire", wire: lead },
  ]);
}
