import type { Context } from "../../context.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { contactOf, feedersOf, isUsed, takersOn, type Wired, wiredRelays } from "../../shared/relays.ts";
import { byName, nameOf, sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "relay-pin-plans-mixed",
    group: "relays",
    severity: "tidy",
    summary: "Relays with two contacts 87 and relays with 87a cannot be taken for one another.",
    source: "from memory",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
  },
  *check(context) {
    const relays = wiredRelays(context).filter(({ fifth }) => fifth && isUsed(fifth));
    for (const wired of relays) {
      const twins = twinsOf(context, wired);
      if (!twins.length) continue;
      const { relay } = wired;
      yield {
        severity: "weak",
        message: `${sayList(twins)} do the same, one on 87 and one on 87a of ${relay.designation}: as in a socket for a relay with two contacts 87.`,
        consequence: "The one on 87a is on while the relay rests, and goes off when the other comes on.",
        remedy: `Use a relay with two contacts 87 for ${relay.designation}, or take both leads to 87, and print the pin plan beside the socket.`,
        about: [contactOf(context, relay, 5).at, contactOf(context, relay, 4).at],
        suggestions: [
          {
            label: `${relay.designation} is one with two contacts 87`,
            edit: { kind: "change-part", part: relay.id, changes: { poles: "double-make" } },
          },
        ],
      };
    }
    const rest = relays.filter(({ relay }) => relay.poles === "changeover");
    const twice = relays.filter(({ relay }) => relay.poles === "double-make");
    if (!rest.length || !twice.length) return;
    const names = (list: readonly Wired[]) => sayList(list.map(({ relay }) => relay.designation));
    yield {
      message: `${names(rest)} ${rest.length === 1 ? "has" : "have"} 87a where ${names(twice)} ${twice.length === 1 ? "has" : "have"} a second 87, and their sockets are of one shape.`,
      consequence: "Exchanged at a repair, a second output is dead, or something is on that should rest.",
      remedy: "Print the pin plan beside each socket, or use one kind of relay throughout.",
      about: [...rest, ...twice].map(({ relay }) => ({ part: relay.id })),
    };
  },
});

/** Two loads for the same thing, one on each output of a changeover contact. */
function twinsOf(context: Context, { relay, c30, c87, fifth }: Wired): readonly string[] {
  if (relay.poles !== "changeover" || !fifth || !isUsed(c87) || c87 === fifth) return [];
  if (!feedersOf(context, c30).length) return [];
  const atRest = takersOn(context, fifth).filter(({ means }) => means.id !== "unknown");
  const pulled = takersOn(context, c87);
  for (const one of [...atRest].sort(byName)) {
    const other = [...pulled]
      .sort(byName)
      .find(({ means, part }) => means === one.means && part !== one.part);
    if (other && !pulled.includes(one) && !atRest.includes(other)) return [nameOf(other), nameOf(one)];
  }
  return [];
}
