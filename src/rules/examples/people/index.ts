import type { Examples } from "../example.ts";
import airbagCircuitTouched from "./airbag-circuit-touched.ts";
import airbagInTheWay from "./airbag-in-the-way.ts";
import highVoltageNear from "./high-voltage-near.ts";
import highVoltageTouched from "./high-voltage-touched.ts";
import unitInDriversSight from "./unit-in-drivers-sight.ts";
import unitNearKneesOrHeads from "./unit-near-knees-or-heads.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "airbag-circuit-touched": airbagCircuitTouched,
  "high-voltage-touched": highVoltageTouched,
  "airbag-in-the-way": airbagInTheWay,
  "high-voltage-near": highVoltageNear,
  "unit-in-drivers-sight": unitInDriversSight,
  "unit-near-knees-or-heads": unitNearKneesOrHeads,
};
