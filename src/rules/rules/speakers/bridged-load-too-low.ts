import { NAMES, SOLVED } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { lowLoads, sayLoad } from "../../shared/speaker-load.ts";

export default defineRule({
  meta: {
    id: "bridged-load-too-low",
    group: "speakers",
    severity: "fault",
    summary: "The speakers between two bridged channels add up to no less than the least load of the pair.",
    source:
      "an article on wiring subwoofers: each of two bridged channels sees half the load; 4 Ω where the plate says nothing: common practice, no source",
    reads: [...SOLVED, ...NAMES],
    fixable: false,
  },
  *check(context) {
    for (const low of lowLoads(context)) {
      if (!low.channel.isPair) continue;
      yield {
        message: sayLoad(context, low),
        consequence:
          "Each of the two channels sees half the load: heat, protection, shutdown, sooner than on one channel.",
        remedy: "Wire the voice coils for a higher load, or take the speakers off the bridge.",
        about: low.about,
      };
    }
  },
});
