import type { Rule } from "../../rule.ts";
import changedAfterTest from "./changed-after-test.ts";
import chartWithoutSource from "./chart-without-source.ts";
import duplicateDesignation from "./duplicate-designation.ts";
import duplicateLabel from "./duplicate-label.ts";
import lengthWithoutDatum from "./length-without-datum.ts";
import testedWithoutSaying from "./tested-without-saying.ts";
import unreadableRule from "./unreadable-rule.ts";
import waiverWithoutFault from "./waiver-without-fault.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  duplicateDesignation,
  duplicateLabel,
  lengthWithoutDatum,
  chartWithoutSource,
  testedWithoutSaying,
  changedAfterTest,
  waiverWithoutFault,
  unreadableRule,
];
