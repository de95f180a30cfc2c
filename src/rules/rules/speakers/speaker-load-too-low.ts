import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { lowLoads, sayLoad } from "../../shared/speaker-load.ts";

export default defineRule({
  meta: {
    id: "speaker-load-too-low",
    group: "speakers",
    severity: "fault",
    summary: "The speakers on a channel add up to no less than the least load of their unit.",
    source:
      "Ohm's law on nominal impedances; 4 Ω for a receiver and 2 Ω for an amplifier of which nothing is stated: common practice, no source",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const low of lowLoads(context)) {
      if (low.channel.isPair) continue;
      yield {
        message: sayLoad(context, low),
        consequence: "The output gives more current than it can bear: heat, protection, shutdown.",
        remedy: "Put speakers in series, on another channel, or on an amplifier whose plate allows the load.",
        about: low.about,
      };
    }
  },
});
