import type { Harness } from "../../graph/harness.ts";
import type { Context } from "../context.ts";
import { FACETS } from "../facets.ts";
import { defineRule, type Found, type Rule } from "../rule.ts";
import { sayList } from "../words.ts";
import { type Property, propertyOf, type Value, valueIn } from "./properties.ts";
import { aboutThing, sayThing, type Thing, thingsOf } from "./things.ts";

export type OwnRule = Harness["settings"]["rules"]["own"][number];
export type Condition = OwnRule["must"][number];

/** Before the names of a shop's own rules, so that none is ever taken for one of the book. */
export const OWN_PREFIX = "own-";

const made = new WeakMap<readonly OwnRule[], readonly Rule[]>();

/**
 * The rules that a shop has written down, as rules like any other. Each thing for which all of `where` holds must
 * have all of `must`; what nobody has stated fulfils nothing. A condition that cannot be read asks for nothing
 * and is told by the rule `unreadable-rule`.
 */
export function ownRules(own: readonly OwnRule[]): readonly Rule[] {
  if (!own.length) return [];
  const known = made.get(own);
  if (known) return known;
  const rules = own.map(asRule);
  made.set(own, rules);
  return rules;
}

/** Conditions that this version cannot read: no such property, or a number that is none. */
export function unreadable({ of, where, must }: OwnRule): readonly Condition[] {
  return [...where, ...must].filter((condition) => {
    const property = propertyOf(of, condition.property);
    if (!property) return true;
    const { is, values } = condition;
    if (is === "given" || is === "not-given") return false;
    if (is === "one-of" || is === "none-of") return values.length === 0 || property.kind === "number";
    return property.kind !== "number" || figureOf(condition) === null;
  });
}

function asRule(rule: OwnRule): Rule {
  return defineRule({
    meta: {
      id: `${OWN_PREFIX}${rule.id}`,
      group: "own",
      severity: rule.severity,
      summary: sentence(rule.words),
      source: "the shop's own rule",
      reads: FACETS,
      fixable: false,
    },
    *check(context) {
      if (unreadable(rule).length) return;
      for (const thing of thingsOf(context, rule.of)) {
        const about = aboutThing(context.harness, thing);
        if (!about.length || !rule.where.every((condition) => applies(condition, thing, context))) continue;
        const broken = rule.must.filter((condition) => !fulfils(condition, thing, context));
        if (broken.length) yield { ...inWords(context, rule, thing, broken), about };
      }
    },
  });
}

/** Whether one of a thing's values is what the condition asks: so things are chosen. */
function applies(condition: Condition, thing: Thing, context: Context): boolean {
  return holds(condition, thing, context, (values, test) => values.some(test));
}

/** Whether all of a thing's values are: so things are judged. */
function fulfils(condition: Condition, thing: Thing, context: Context): boolean {
  return holds(condition, thing, context, (values, test) => values.every(test));
}

function holds(
  condition: Condition,
  thing: Thing,
  context: Context,
  each: (values: readonly string[], test: (value: string) => boolean) => boolean,
): boolean {
  const value = valueIn(propertyOf(thing.kind, condition.property)!, thing, context);
  if (condition.is === "given") return value !== null;
  if (condition.is === "not-given") return value === null;
  if (value === null) return false;
  if (typeof value === "number") {
    const limit = figureOf(condition);
    if (limit === null) return false;
    return condition.is === "at-least" ? value >= limit : value <= limit;
  }
  const named = (word: string) =>
    condition.values.some((one) => one.trim().toLowerCase() === word.trim().toLowerCase());
  if (condition.is === "one-of") return each(value, named);
  return value.every((word) => !named(word));
}

function figureOf({ values }: Condition): number | null {
  const figure = Number((values[0] ?? "").replace(",", "."));
  return values.length === 1 && values[0]?.trim() !== "" && Number.isFinite(figure) ? figure : null;
}

function inWords(
  context: Context,
  rule: OwnRule,
  thing: Thing,
  broken: readonly Condition[],
): Omit<Found, "about"> {
  const { shop } = context.harness.settings.rules;
  const is = broken.map((condition) => {
    const property = propertyOf(rule.of, condition.property)!;
    return `${property.words}: ${sayValue(property, valueIn(property, thing, context))}`;
  });
  const ought = broken.map((condition) => sayCondition(rule.of, condition));
  const name = sayThing(thing);
  return {
    message: `${name.charAt(0).toUpperCase()}${name.slice(1)} is against a rule of ${shop || "this harness"}, “${rule.words.replace(/\.$/, "")}” (${sayList(is)}).`,
    consequence: "The shop does not hand over work that breaks this rule.",
    remedy: `See to it that ${sayList(ought)}.`,
  };
}

/** "cover is adhesive sleeve or housing": a condition as a person reads it. */
export function sayCondition(of: OwnRule["of"], { property, is, values }: Condition): string {
  const known = propertyOf(of, property);
  const name = known?.words ?? property;
  const unit = known?.unit ? ` ${known.unit}` : "";
  const named = values.map((word) => (known?.kind === "choice" ? sayChoice(word) : `“${word}”`));
  const either = named.length > 1 ? `${named.slice(0, -1).join(", ")} or ${named.at(-1)}` : (named[0] ?? "");
  switch (is) {
    case "given":
      return `${name} is stated`;
    case "not-given":
      return `${name} is not stated`;
    case "at-least":
      return `${name} is at least ${values[0] ?? ""}${unit}`;
    case "at-most":
      return `${name} is at most ${values[0] ?? ""}${unit}`;
    case "one-of":
      return `${name} is ${either}`;
    case "none-of":
      return `${name} is not ${either}`;
  }
}

/** "adhesive sleeve" for "adhesive-sleeve"; a colour's letters stay as they are. */
export function sayChoice(word: string): string {
  return word.replaceAll("-", " ");
}

function sayValue(property: Property, value: Value): string {
  if (value === null) return "not stated";
  if (typeof value === "number") return `${value}${property.unit ? ` ${property.unit}` : ""}`;
  return sayList(value.map((word) => (property.kind === "choice" ? sayChoice(word) : `“${word}”`)));
}

function sentence(words: string): string {
  const trimmed = words.trim().replace(/\.$/, "");
  return `${trimmed.charAt(0).toUpperCase()}${trimmed.slice(1)}.`;
}
