import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { crossedPairs, tellCrossed } from "../../shared/crossed-pairs.ts";

export default defineRule({
  meta: {
    id: "data-leads-exchanged",
    group: "data",
    severity: "fault",
    summary: "The two leads of a USB or J1850 pair are not exchanged, nor joined to each other.",
    source: "common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
    brings: ["same-function-unjoined"],
  },
  *check(context) {
    for (const crossed of crossedPairs(context, [
      "usb-data-plus",
      "usb-data-minus",
      "j1850-plus",
      "j1850-minus",
    ])) {
      // A socket that only charges has its two data leads joined on purpose: so it says that it may be drawn from.
      if (crossed.own.unit === crossed.other.unit && crossed.own.means.id.startsWith("usb")) continue;
      yield tellCrossed(context, crossed, {
        consequence: "Neither side hears the other: the device charges at best, and says nothing.",
        remedy: "Exchange the two leads at one end.",
      });
    }
  },
});
