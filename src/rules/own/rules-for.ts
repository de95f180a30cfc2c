import type { Harness } from "../../graph/harness.ts";
import { RULES } from "../registry.ts";
import type { Rule } from "../rule.ts";
import { ownRules } from "./own-rule.ts";

/** Every rule that a harness is checked by: the book's, and its own. */
export function rulesFor(harness: Pick<Harness, "settings">): readonly Rule[] {
  const own = ownRules(harness.settings.rules.own);
  return own.length ? [...RULES, ...own] : RULES;
}
