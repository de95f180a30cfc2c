import { sayState } from "../../../electrical/operate/key-state.ts";
import type { PartId } from "../../../graph/harness.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { isUsed, wiredRelays } from "../../shared/relays.ts";
import { sayList } from "../../words.ts";

export default defineRule({
  meta: {
    id: "relay-chatters",
    group: "relays",
    severity: "fault",
    summary: "A relay that pulls does not cut its own coil by it.",
    source: "the solved circuit: no state of the contacts agrees with itself; common practice, no source",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["relay-contacts-mixed"],
  },
  *check(context) {
    const relays = wiredRelays(context);
    // Only a contact that opens can cut a coil, its own or another's that holds it.
    if (!relays.some(({ relay, fifth }) => relay.poles === "changeover" && fifth && isUsed(fifth))) return;
    const told = new Set<string>();
    for (const state of context.solved.states) {
      for (const { code, about } of context.solved.at(state).warnings) {
        const names = relays.filter(({ relay }) => about.includes(relay.id)).map(({ relay }) => relay);
        const key = names.map(({ id }) => id).join(" ");
        if (code !== "relay-chatters" || !names.length || told.has(key)) continue;
        told.add(key);
        yield {
          message: `With the key at ${sayState(state, context.harness)}, ${sayList(names.map(({ designation }) => designation))} cannot come to rest: pulled, ${names.length === 1 ? "it cuts its own coil" : "they cut one another's coils"}, and released, ${names.length === 1 ? "it closes it" : "they close them"} again.`,
          consequence: "It buzzes, and its contact burns away in minutes.",
          remedy: "Feed the coil from before the contact that opens.",
          about: names.map(({ id }): { readonly part: PartId } => ({ part: id })),
        };
      }
    }
  },
});
