import { GROUPS, type GroupId } from "../../rules/groups.ts";
import type { Rule } from "../../rules/rule.ts";

export type ListedGroup = { readonly id: GroupId; readonly name: string; readonly rules: readonly Rule[] };

/** The rules that hold all the words typed, group by group; every word of a rule's own counts. */
export function rulesFound(rules: readonly Rule[], typed: string): readonly ListedGroup[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const holds = ({ meta }: Rule): boolean => {
    const text = `${meta.id} ${meta.summary} ${meta.severity} ${meta.source} ${meta.group}`.toLowerCase();
    return words.every((word) => text.includes(word));
  };
  return GROUPS.map(({ id, name }) => ({
    id,
    name,
    rules: rules.filter((rule) => rule.meta.group === id && holds(rule)),
  })).filter((group) => group.rules.length > 0);
}
