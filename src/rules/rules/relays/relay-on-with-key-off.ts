import { digits } from "../../../electrical/figure.ts";
import type { Context } from "../../context.ts";
import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { contactOf, wiredRelays } from "../../shared/relays.ts";

const OFF = { key: "off", conditions: [] } as const;

export default defineRule({
  meta: {
    id: "relay-on-with-key-off",
    group: "relays",
    severity: "weak",
    summary: "With the key off no relay is pulled.",
    source: "a relay maker's questions and answers for the coil's current; the days are reckoned from it",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
    brings: ["turn-on-from-constant"],
  },
  *check(context) {
    for (const { relay, c85, c86 } of wiredRelays(context)) {
      // What somebody has to switch on is not on by itself; an isolator is opened by who parks.
      const plus = [c86, c85].find((end) => context.feeds.unattendedAt(end).includes("off"));
      const minus = plus === c86 ? c85 : c86;
      if (!plus || plus === minus || !context.grounds.unattendedAt(minus).includes("off")) continue;
      const shown = context.solved.at(OFF).relay(relay.id);
      if (!shown?.pulledIn) continue;
      const { coil_A } = shown;
      yield {
        message: `The coil of ${relay.designation} is on with the key off, and draws ${digits(coil_A * 1000, 2)} mA.`,
        consequence: `It empties half of ${sayBattery(context)} in about ${sayDays(context, coil_A)}, and what it switches stays on as well.`,
        remedy: "Trigger the coil from what comes with the key, or from the output of what needs it.",
        about: [contactOf(context, relay, 3).at, contactOf(context, relay, 2).at],
      };
    }
  },
});

const USUAL_Ah = 50;

function capacityOf({ parts }: Context): number | null {
  const known = parts.flatMap((part) =>
    part.kind === "supply" && part.capacity_Ah !== "unknown" ? [part.capacity_Ah] : [],
  );
  return known.length ? Math.max(...known) : null;
}

function sayBattery(context: Context): string {
  return `a battery of ${digits(capacityOf(context) ?? USUAL_Ah)} Ah`;
}

function sayDays(context: Context, amps: number): string {
  const days = (capacityOf(context) ?? USUAL_Ah) / 2 / amps / 24;
  return days < 1.5 ? "a day" : `${Math.round(days)} days`;
}
