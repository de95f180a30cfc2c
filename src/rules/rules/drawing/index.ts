import type { Rule } from "../../rule.ts";
import duplicateDesignation from "./duplicate-designation.ts";
import unreadableRule from "./unreadable-rule.ts";
import waiverWithoutFault from "./waiver-without-fault.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [duplicateDesignation, waiverWithoutFault, unreadableRule];
