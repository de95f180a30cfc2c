import { wakes } from "../../../electrical/operate/box-contacts.ts";
import type { Point } from "../../../electrical/points.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { type About, defineRule } from "../../rule.ts";
import { pullsToGround } from "../../shared/near.ts";
import { contactOf, isUsed, type Wired, wiredRelays } from "../../shared/relays.ts";
import { zoneFrom } from "../../shared/zone.ts";
import { byName, nameOf, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "relay-holds-itself",
    group: "relays",
    severity: "fault",
    summary: "A relay lets go when what has pulled it goes off.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: false,
    brings: ["turn-on-from-constant", "outputs-tied", "feed-of-wrong-kind"],
  },
  *check(context) {
    const relays = wiredRelays(context).filter(({ c87 }) => isUsed(c87));
    const told = new Set<Wired["relay"]>();
    for (const wired of relays) {
      // What its own contact feeds has to be there with the key off, with nobody at a switch.
      if (!context.feeds.unattendedAt(wired.c30).includes("off")) continue;
      const fed = fedBy(context, wired);
      const { relay } = wired;
      const box = wokenBox(context, wired, fed);
      if (box) {
        yield {
          message: `${nameOf(box.output)} pulls ${relay.designation}, and ${relay.designation} feeds ${nameOf(box.input)} of the same unit, which keeps it awake.`,
          consequence:
            "Once on, the unit keeps its own feed alive: it stays on after the key is out, and the battery is flat by morning.",
          remedy: `Feed ${nameOf(box.input)} from what comes with the key, and from nothing that ${relay.designation} feeds.`,
          about: [{ part: relay.id }, box.output.at, box.input.at],
        };
        continue;
      }
      const others = holdsByItself(context, wired, fed, relays);
      if (!others || told.has(relay)) continue;
      for (const other of others) told.add(other);
      yield {
        message: others.length
          ? `${relay.designation} and ${sayList(others.map(({ designation }) => designation))} hold one another: pulled once, they stay pulled with the key off.`
          : `${relay.designation} feeds its own coil: pulled once, it stays pulled with the key off.`,
        consequence:
          "What it switches stays on after the key is out, until somebody takes the fuse: a flat battery.",
        remedy:
          "Trigger the coil from a feed that the relay does not feed, with a diode where two things pull it.",
        about: [contactOf(context, relay, 3).at, contactOf(context, relay, 4).at].map((at): About => at),
      };
    }
  },
});

/** An output of a box that drives the coil, and an input of the same box that the contact feeds and that wakes it. */
function wokenBox(
  context: Context,
  { c85, c86 }: Wired,
  fed: readonly number[],
): { readonly output: Point; readonly input: Point } | null {
  const outputs = [...c86.points, ...c85.points]
    .filter(
      ({ direction, unit, means }) => direction === "gives" && unit !== null && means.group !== "ground",
    )
    .filter(({ side }) => side === "equipment")
    .sort(byName);
  for (const output of outputs) {
    const input = fed
      .flatMap((id) => context.points.circuits[id]!.points)
      .filter(({ unit, direction, means }) => unit === output.unit && direction === "takes" && wakes(means))
      .sort(byName)[0];
    if (input) return { output, input };
  }
  return null;
}

/** By its own contact alone, or by way of other relays that it pulls, which are named; `null` where it does not. */
function holdsByItself(
  context: Context,
  own: Wired,
  fed: readonly number[],
  relays: readonly Wired[],
): readonly Wired["relay"][] | null {
  const zone = new Set(fed);
  if (isPulledBy(context, own, zone)) return [];
  const others: Wired["relay"][] = [];
  const left = new Set(relays.filter((one) => one !== own && isUsed(one.c87)));
  for (let grew = true; grew; ) {
    grew = false;
    for (const other of left) {
      if (!isPulledBy(context, other, zone)) continue;
      left.delete(other);
      if (!context.feeds.unattendedAt(other.c30).includes("off")) continue;
      others.push(other.relay);
      for (const id of fedBy(context, other)) zone.add(id);
      grew = true;
    }
    if (grew && isPulledBy(context, own, zone)) return others;
  }
  return null;
}

/** One end of its coil is fed from these circuits, and the other is on ground with nobody at a switch. */
function isPulledBy(context: Context, { c85, c86 }: Wired, zone: ReadonlySet<number>): boolean {
  const pulls = (plus: Wired["c86"], minus: Wired["c86"]) =>
    zone.has(plus.circuit.id) &&
    plus !== minus &&
    (context.grounds.unattendedAt(minus).includes("off") || minus.points.some(pullsToGround));
  return pulls(c86, c85) || pulls(c85, c86);
}

function fedBy(context: Context, { c87 }: Wired): readonly number[] {
  return zoneFrom(context, c87.circuit.id, ({ kind }) => kind === "fuse" || kind === "through");
}
