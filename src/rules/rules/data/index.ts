import type { Rule } from "../../rule.ts";
import sameShellMatedWrongly from "./same-shell-mated-wrongly.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [sameShellMatedWrongly];
