import type * as z from "zod/mini";
import { part } from "../schema/parts.ts";
import type { Found } from "./place.ts";
import { showValue } from "./problem.ts";

const TYPES: Readonly<Record<string, string>> = {
  string: "text in double quotes",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  object: "an object",
  record: "an object",
  array: "a list",
  tuple: "a list",
  null: "null",
};

const KINDS = part.def.options.map((option) => option.shape.kind.def.values[0]);

/** What the schema says of one value, as problems that a person can act on. */
export function asFound(issue: z.core.$ZodIssue, raw: unknown, path: readonly PropertyKey[]): Found {
  const deeper = issue.code === "invalid_union" ? closestForm(issue) : null;
  if (deeper) return asFound({ ...deeper, path: [...issue.path, ...deeper.path] }, raw, path);
  const value = issue.path.reduce<unknown>(
    (at, step) =>
      typeof at === "object" && at !== null && Object.hasOwn(at, step)
        ? (at as Record<PropertyKey, unknown>)[step]
        : undefined,
    raw,
  );
  const missing = value === undefined;
  return {
    path: [...path, ...issue.path],
    code: missing ? "missing-field" : "wrong-value",
    found: showValue(value),
    expected: expectation(issue),
    next: missing ? "Add the field." : "Correct the value.",
  };
}

/** Of a value that may have several forms, the complaint of the form that it comes nearest to. */
function closestForm(issue: z.core.$ZodIssueInvalidUnion): z.core.$ZodIssue | null {
  let best: z.core.$ZodIssue | null = null;
  for (const [first] of issue.errors) {
    if (first && first.path.length > (best?.path.length ?? 0)) best = first;
  }
  return best;
}

function expectation(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "invalid_value":
      return oneOf(issue.values.map(showValue));
    case "invalid_type":
      return TYPES[issue.expected] ?? `a ${issue.expected}`;
    case "too_big":
      return `${issue.inclusive === false ? "less than" : "at most"} ${issue.maximum}${unit(issue.origin)}`;
    case "too_small":
      if (issue.origin === "string") return "some text";
      return `${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}${unit(issue.origin)}`;
    case "invalid_format":
      return `text of the form ${"pattern" in issue ? issue.pattern : issue.format}`;
    case "invalid_union":
      if ("discriminator" in issue && issue.discriminator === "kind") return oneOf(KINDS.map(showValue));
      return issue.errors.map(([first]) => (first ? expectation(first) : "")).join(", or ");
    default:
      return issue.message;
  }
}

function oneOf(values: readonly string[]): string {
  return values.length === 1 ? values[0]! : `one of ${values.join(", ")}`;
}

function unit(origin: string): string {
  return origin === "string" ? " characters" : origin === "array" || origin === "tuple" ? " entries" : "";
}
