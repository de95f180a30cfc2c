import type { Edit } from "../../graph/edits/edit.ts";
import type { Harness } from "../../graph/harness.ts";
import { LIMITS } from "../../graph/schema/rules.ts";
import type { Condition, OwnRule } from "../../rules/own/own-rule.ts";
import { PROPERTIES, type Property } from "../../rules/own/properties.ts";
import { LIMIT_WORDS, type LimitName } from "../../rules/profile/limits.ts";
import { profileOf } from "../../rules/profile/profiles.ts";

export type Rules = Harness["settings"]["rules"];

/** The edit that sets something of the rules that a harness is checked by. */
export function rulesEdit(rules: Rules, changes: Partial<Rules>): Edit {
  return { kind: "change-settings", changes: { rules: { ...rules, ...changes } } };
}

export type LimitRow = {
  readonly name: LimitName;
  readonly words: string;
  readonly unit: string;
  /** What the book says, and which book. */
  readonly value: number;
  readonly book: string;
  /** What stands in its place; `null` for the book's own. */
  readonly own: number | null;
};

/** Every limit with the book's figure and the harness's own. */
export function limitRows(rules: Rules): readonly LimitRow[] {
  const { limits } = profileOf({ rules: { ...rules, limits: [] } });
  return LIMITS.map((name) => ({
    name,
    ...LIMIT_WORDS[name],
    ...limits[name],
    own: rules.limits.find((one) => one.name === name)?.value ?? null,
  }));
}

/** The limits with one of them set, or left to the book again. `null` for a text that is no number. */
export function withLimit(rules: Rules, name: LimitName, typed: string): Rules["limits"] | null {
  const others = rules.limits.filter((one) => one.name !== name);
  if (typed.trim() === "") return others;
  const value = Number(typed.trim().replace(",", "."));
  return Number.isFinite(value) && value >= 0 && value <= 100_000 ? [...others, { name, value }] : null;
}

/** A rule to begin from, under a name that no other of the harness has. */
export function freshRule(own: readonly OwnRule[], from: OwnRule | null): OwnRule {
  const start: OwnRule = from ?? {
    id: "rule",
    words: "",
    severity: "weak",
    of: "wire",
    where: [],
    must: [{ property: "label", is: "given", values: [] }],
  };
  let id = start.id;
  for (let number = 2; own.some((rule) => rule.id === id); number++) id = `${start.id}-${number}`;
  return { ...start, id };
}

/** Puts a rule in the place of the one of its name, or at the end. */
export function withRule(own: readonly OwnRule[], rule: OwnRule): readonly OwnRule[] {
  return own.some(({ id }) => id === rule.id)
    ? own.map((one) => (one.id === rule.id ? rule : one))
    : [...own, rule];
}

/** Ways in which a property can be asked for. */
export function waysToAsk(property: Property): readonly (readonly [Condition["is"], string])[] {
  const stated: readonly (readonly [Condition["is"], string])[] = [
    ["given", "is stated"],
    ["not-given", "is not stated"],
  ];
  return property.kind === "number"
    ? [["at-least", "is at least"], ["at-most", "is at most"], ...stated]
    : [["one-of", "is one of"], ["none-of", "is none of"], ...stated];
}

/** The first condition that can be asked of a kind of thing. */
export function firstCondition(of: OwnRule["of"]): Condition {
  const [property] = PROPERTIES[of];
  return conditionOn(property!);
}

/** A condition on a property with nothing filled in that would be wrong. */
export function conditionOn(property: Property): Condition {
  return property.kind === "number"
    ? { property: property.id, is: "at-least", values: ["1"] }
    : property.choices
      ? { property: property.id, is: "one-of", values: property.choices.slice(0, 1) }
      : { property: property.id, is: "given", values: [] };
}
