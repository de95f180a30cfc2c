import { NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";

export default defineRule({
  meta: {
    id: "unit-in-drivers-sight",
    group: "people",
    severity: "danger",
    summary: "No display or box stands in the driver's sight of the road.",
    source:
      "FCS 1362 §3.2 (the place is agreed with the driver); local codes on screens in the driver's view go before this",
    reads: [...NAMES, "functions"],
    fixable: false,
  },
  *check({ parts }) {
    for (const part of parts) {
      if (part.kind !== "module" || !part.near.includes("drivers-sight")) continue;
      const what = part.role === "display" || part.role === "receiver" ? "whose screen can move, " : "";
      yield {
        message: `${part.designation}, ${what}stands in the driver's sight of the road.`.replace(
          ", stands",
          " stands",
        ),
        consequence:
          "It hides what is on the road or draws the eye from it; in many places it is against the law.",
        remedy:
          "Agree on another place with the driver, by the local code. A screen that shows pictures while driving needs its parking-brake lead joined as its maker says.",
        about: [{ part: part.id }],
      };
    }
  },
});
