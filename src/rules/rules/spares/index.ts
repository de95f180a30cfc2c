import type { Rule } from "../../rule.ts";
import leadInUnusedCavity from "./lead-in-unused-cavity.ts";
import looseLead from "./loose-lead.ts";
import looseLiveLead from "./loose-live-lead.ts";
import requiredLeadMissing from "./required-lead-missing.ts";
import sameFunctionUnjoined from "./same-function-unjoined.ts";
import severalSparesUnderOneCap from "./several-spares-under-one-cap.ts";
import spareNotCapped from "./spare-not-capped.ts";
import unlabelledSpare from "./unlabelled-spare.ts";
import unusedHoleOpen from "./unused-hole-open.ts";
import unusedLinePlugUncovered from "./unused-line-plug-uncovered.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  looseLiveLead,
  looseLead,
  spareNotCapped,
  unusedHoleOpen,
  severalSparesUnderOneCap,
  unlabelledSpare,
  leadInUnusedCavity,
  requiredLeadMissing,
  sameFunctionUnjoined,
  unusedLinePlugUncovered,
];
