import { keysOf } from "../../../graph/contacts.ts";
import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { sayList, sayPoint } from "../../words.ts";

export default defineRule({
  meta: {
    id: "unlabelled-spare",
    group: "spares",
    severity: "tidy",
    summary: "A capped spare says, on its cap or on paper, what it was for.",
    source: "IEC 62491: cables and cores are to be recognisable at each end",
    reads: [...CIRCUITS, ...NAMES, "labels", "notes"],
    fixable: false,
  },
  *check(context) {
    for (const cap of context.parts) {
      if (cap.kind !== "cap" || cap.name !== "" || cap.note !== "") continue;
      const wires = context.traced.wiresAt(keysOf(cap)[0]!);
      if (wires.length !== 1 || wires[0]!.label !== "" || wires[0]!.note !== "") continue;
      const { points } = context.points.circuitAt(cap.id, 1);
      // A cavity with a function or with the chart's own words is its own label.
      const nameless = points.filter(({ means, contact }) => means.id === "unknown" && !contact.cavity?.text);
      if (!points.length || nameless.length !== points.length) continue;
      yield {
        message: `Nobody will know what ${sayList(nameless.map((point) => sayPoint(context, point)))} under ${cap.designation} was for.`,
        consequence: "The next fitter cuts it off, or joins it by its colour.",
        remedy: "Say what the cavity is for, or write a label for its lead.",
        about: [{ part: cap.id }, { wire: wires[0]!.id }],
      };
    }
  },
});
