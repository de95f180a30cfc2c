import { CIRCUITS, NAMES } from "../../facets.ts";
import { defineRule } from "../../rule.ts";
import { looseLeads } from "../../shared/loose.ts";

export default defineRule({
  meta: {
    id: "loose-lead",
    group: "spares",
    severity: "fault",
    summary: "Both ends of a wire are on a contact, in a joint or under a cap.",
    source:
      "FAA AC 43.13-1B chapter 11 asks for loose ends to be made safe and stowed (from memory); otherwise common practice, no source",
    reads: [...CIRCUITS, ...NAMES],
    fixable: true,
    brings: ["trigger-core-at-one-end"],
  },
  *check(context) {
    for (const lead of looseLeads(context)) {
      if (lead.isLive || (lead.isSpare && lead.ends === "ends loose")) continue;
      if (lead.isStock) {
        yield {
          severity: "tidy",
          message: `${lead.name} is a length of wire with both ends loose.`,
          consequence: "It joins nothing; somebody will look for its ends.",
          remedy: "Land it on two contacts, or remove it.",
          about: [{ wire: lead.wire.id }],
        };
        continue;
      }
      yield {
        message: `${lead.name} from ${lead.from} ${lead.ends}.${lead.wish}`,
        consequence: "What it is for will not work, or the bare end finds metal.",
        remedy: lead.remedy,
        about: [{ wire: lead.wire.id }],
        fix: lead.fix,
      };
    }
  },
});
