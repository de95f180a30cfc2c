import type { Harness } from "../../graph/harness.ts";
import type { Rule } from "../rule.ts";

export type OwnRule = Harness["settings"]["rules"]["own"][number];

/** The rules that a shop has written down, as rules like any other; their names begin with "own-". */
export function ownRules(_own: readonly OwnRule[]): readonly Rule[] {
  return [];
}
