import type { Examples } from "../example.ts";
import changedAfterTest from "./changed-after-test.ts";
import chartWithoutSource from "./chart-without-source.ts";
import duplicateDesignation from "./duplicate-designation.ts";
import duplicateLabel from "./duplicate-label.ts";
import lengthWithoutDatum from "./length-without-datum.ts";
import testedWithoutSaying from "./tested-without-saying.ts";
import unreadableRule from "./unreadable-rule.ts";
import waiverWithoutFault from "./waiver-without-fault.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "duplicate-designation": duplicateDesignation,
  "duplicate-label": duplicateLabel,
  "length-without-datum": lengthWithoutDatum,
  "chart-without-source": chartWithoutSource,
  "tested-without-saying": testedWithoutSaying,
  "changed-after-test": changedAfterTest,
  "waiver-without-fault": waiverWithoutFault,
  "unreadable-rule": unreadableRule,
};
