import type { Examples } from "../example.ts";
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

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "loose-live-lead": looseLiveLead,
  "loose-lead": looseLead,
  "spare-not-capped": spareNotCapped,
  "unused-hole-open": unusedHoleOpen,
  "several-spares-under-one-cap": severalSparesUnderOneCap,
  "unlabelled-spare": unlabelledSpare,
  "lead-in-unused-cavity": leadInUnusedCavity,
  "required-lead-missing": requiredLeadMissing,
  "same-function-unjoined": sameFunctionUnjoined,
  "unused-line-plug-uncovered": unusedLinePlugUncovered,
};
