import { functionOf, partnerOf } from "../../../catalogue/functions.ts";
import type { Point } from "../../../electrical/points.ts";
import { type ContactKey, keyOfEnd, refOfKey } from "../../../graph/contacts.ts";
import type { Wire, WireId } from "../../../graph/harness.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { type Cores, cablesOf, circuitOfWire, copperFrom, isGroundContact } from "../../shared/cables.ts";
import { byName, compareNames, sayGrounds, sayList, sayWire } from "../../words.ts";

export default defineRule({
  meta: {
    id: "shield-grounded-twice",
    group: "signals",
    severity: "weak",
    summary: "A shield that is not the return of its signal is grounded at one end only.",
    source:
      "workshop manuals on cameras: a twisted pair whose foil shield ends at the display and is left open at the camera",
    reads: [...CIRCUITS, ...NAMES, "cables", "sizes"],
    fixable: false,
  },
  *check(context) {
    const cables = cablesOf(context).filter((one) => isShieldOfPair(context, one));
    if (!cables.length) return;
    const shields = cables.map(({ shield }) => shield!);
    const without = new Set<WireId>(shields.map(({ id }) => id));
    for (const { chain, grounds } of chains(context, shields, without)) {
      if (grounds.length < 2) continue;
      const points = grounds.flatMap((keys) => groundOf(context, keys));
      chain.sort((a, b) => compareNames(a.designation, b.designation));
      const own = cables.filter(({ shield }) => chain.includes(shield!));
      yield {
        message: `The shield of ${sayList(own.map(({ cable }) => cable.designation))}, ${sayList(chain.map(sayWire))}, is grounded at both ends: at ${sayGrounds(context, points)}.`,
        consequence:
          "Two grounds are never at quite the same volts: what flows between them flows through the shield, and hums.",
        remedy:
          "Leave the shield off at the end that is far from the display or the receiver, cut back and insulated.",
        about: [...chain.map(({ id }) => ({ wire: id })), ...points.map((point) => point.at)],
      };
    }
  },
});

/** Of the grounds that an end reaches, the stud; where there is none, the first by name. */
function groundOf(context: Context, keys: readonly ContactKey[]): readonly Point[] {
  const points = keys.flatMap((key) => {
    const { part, contact } = refOfKey(key);
    return context.points.pointAt(part, contact) ?? [];
  });
  const rank = ({ part }: Point) => (part.kind === "ground" ? 0 : 1);
  return points.sort((a, b) => rank(a) - rank(b) || byName(a, b)).slice(0, 1);
}

/** A shield round a signal that has a return of its own among the cores. */
function isShieldOfPair(context: Context, { cable, cores, shield }: Cores): boolean {
  if (!shield || cable.kind === "coax" || cores.length < 2) return false;
  const functions = new Set(
    cores.flatMap((core) => circuitOfWire(context, core)?.points.map(({ means }) => means.id) ?? []),
  );
  const returns = new Set([...functions].flatMap((name) => partnerOf(name) ?? []));
  const atShield = circuitOfWire(context, shield)?.points ?? [];
  // The return of one of the cores: it has to be joined at both ends.
  if (atShield.some(({ means }) => returns.has(means.id) && functionOf(means.id).group !== "ground"))
    return false;
  return cable.kind === "shielded-pair" || [...functions].some((name) => returns.has(name));
}

type Chain = { readonly chain: Wire[]; readonly grounds: ContactKey[][] };

/** Shields that run on into one another, and the different grounds that their ends reach without them. */
function chains(context: Context, shields: readonly Wire[], without: ReadonlySet<WireId>): readonly Chain[] {
  const ends = shields.map((wire) =>
    wire.ends.flatMap((end) => {
      const key = keyOfEnd(end);
      return key ? [copperFrom(context, key, without)] : [];
    }),
  );
  const groundsOf = (copper: readonly ContactKey[]) =>
    copper.filter((key) => isGroundContact(context, key)).sort();
  const left = new Set(shields.keys());
  const found: Chain[] = [];
  for (const first of shields.keys()) {
    if (!left.delete(first)) continue;
    const members = [first];
    const grounds = new Map<string, ContactKey[]>();
    for (let next = 0; next < members.length; next++) {
      for (const copper of ends[members[next]!]!) {
        const reached = groundsOf(copper);
        if (reached.length) {
          grounds.set([...copper].sort()[0]!, reached);
          continue;
        }
        const here = new Set(copper);
        for (const other of left) {
          if (!ends[other]!.some((one) => here.has(one[0]!))) continue;
          left.delete(other);
          members.push(other);
        }
      }
    }
    found.push({ chain: members.map((index) => shields[index]!), grounds: [...grounds.values()] });
  }
  return found;
}
