import type { Examples } from "../example.ts";
import unreadableRule from "./unreadable-rule.ts";
import waiverWithoutFault from "./waiver-without-fault.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "waiver-without-fault": waiverWithoutFault,
  "unreadable-rule": unreadableRule,
};
