import type { Rule } from "../../rule.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [];
