import { contactsOf } from "../../../graph/contacts.ts";
import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { walkLeads } from "../../shared/lead-walk.ts";
import { contactOf, isUsed, wiredRelays } from "../../shared/relays.ts";
import type { Stretch } from "../../shared/stretches.ts";
import { isPassed } from "../../shared/thin-wires.ts";
import { nameOf, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "relay-contact-unfused",
    group: "relays",
    severity: "danger",
    summary: "The fuse of what a relay switches stands before its contact.",
    source: "33 CFR 183.455(a); a relay maker's questions and answers (fuse at 30)",
    reads: [...CIRCUITS, ...NAMES, "lengths", "runs", "settings"],
    fixable: false,
    brings: ["fuse-too-far"],
  },
  *check(context) {
    for (const { relay, c30, c87, fifth } of wiredRelays(context)) {
      const bare = context.stretches
        .at(c30.circuit.id)
        .find(({ guard, source }) => guard.kind === "none" && source.means.group === "feed");
      if (!bare) continue;
      // Behind the contact the stretch goes on: a load there with no fuse at all is told by the rule for that.
      const outputs = [c87, ...(fifth ? [fifth] : [])].filter(isUsed);
      const fusedBehind = outputs.some((circuit) => leadsToFuse(context, circuit.circuit.id));
      const drawn = bare.circuits.some((id) =>
        context.points.circuits[id]!.points.some(
          ({ part, direction }) => direction === "takes" || part.kind === "load",
        ),
      );
      if (!fusedBehind || drawn || isClose(context, bare)) continue;
      yield {
        message: `30 of ${relay.designation} is fed from ${sayPoint(context, bare.source)} with no fuse before it; the fuse stands behind the contact.`,
        consequence:
          "The lead to the relay, the socket and the contact are live at all times with nothing to stop a short: they glow, and what is around them burns.",
        remedy: `Move the fuse, or put another, as close to ${nameOf(bare.source)} as can be, before 30.`,
        about: [contactOf(context, relay, 1).at, bare.source.at],
      };
    }
  },
});

function leadsToFuse(context: Context, circuit: number): boolean {
  return (context.ways[circuit] ?? []).some(({ gate }) => gate.kind === "fuse");
}

/** Every fuse that it ends in stands within the distance that the book allows, contact or no contact. */
function isClose(context: Context, { source, circuits }: Stretch): boolean {
  const most_mm = context.profile.limits.fuseDistance_mm.value;
  const reached = walkLeads(context, source.landings, isPassed);
  const fuses = circuits.flatMap((id) =>
    (context.ways[id] ?? []).flatMap(({ gate }) => (gate.kind === "fuse" ? [gate.fuse] : [])),
  );
  return fuses.every((id) => {
    const part = context.harness.parts[id];
    const ways = part
      ? contactsOf(part).flatMap(({ number }) => reached.get(`${part.id}#${number}`) ?? [])
      : [];
    return ways.some(({ length_m, isKnown }) => isKnown && length_m * 1000 <= most_mm);
  });
}
