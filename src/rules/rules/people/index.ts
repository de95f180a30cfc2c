import type { Rule } from "../../rule.ts";
import airbagCircuitTouched from "./airbag-circuit-touched.ts";
import airbagInTheWay from "./airbag-in-the-way.ts";
import highVoltageNear from "./high-voltage-near.ts";
import highVoltageTouched from "./high-voltage-touched.ts";
import unitInDriversSight from "./unit-in-drivers-sight.ts";
import unitNearKneesOrHeads from "./unit-near-knees-or-heads.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  airbagCircuitTouched,
  highVoltageTouched,
  airbagInTheWay,
  highVoltageNear,
  unitInDriversSight,
  unitNearKneesOrHeads,
];
