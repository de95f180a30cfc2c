import type { Rule } from "../../rule.ts";
import noFuse from "./no-fuse.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [noFuse];
