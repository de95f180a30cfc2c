import { writeColour } from "../../catalogue/colours.ts";
import { functionOf } from "../../catalogue/functions.ts";
import type { InContext } from "./context.ts";
import type { Pair } from "./pairs.ts";
import type { Made, Sides } from "./propose.ts";
import { sameColour } from "./traps.ts";

/** Why two leads are joined, in words. */
export function sayJoin(pair: Pair, left: InContext, right: InContext): string {
  return [...reasons(pair, left, right), colours(left, right)].filter((part) => part !== "").join("; ");
}

function reasons(pair: Pair, left: InContext, right: InContext): readonly string[] {
  const a = left.reading.candidates[0]?.function;
  const b = right.reading.candidates[0]?.function;
  const said = [left.because, right.because].filter((part) => part !== "");
  if (a !== undefined && a === b && left.reading.certain && right.reading.certain)
    return [`both are the ${functionOf(a).name}`, ...said];
  if (pair.sameWords) return [`both charts say “${left.lead.text}”`, ...said];
  const open = [left, right].filter((one) => !one.reading.certain);
  if (open.length === 0 && a !== undefined && b !== undefined)
    return [
      `${functionOf(a).name} and ${functionOf(b).name} are one circuit here, and nothing else fits`,
      ...said,
    ];
  return open.map(
    ({ lead }) => `“${lead.text}” is taken for ${functionOf(pair.function).name}; nothing else here fits it`,
  );
}

function colours(left: InContext, right: InContext): string {
  const a = left.lead.colour;
  const b = right.lead.colour;
  if (!a || !b) return "";
  if (sameColour(a, b)) return `both are ${writeColour(a)}`;
  return `the charts' colours differ: ${writeColour(a)} here, ${writeColour(b)} there`;
}

/** What is not sure, and what it hangs on. */
export function sayQuestion(
  lefts: readonly number[],
  rights: readonly number[],
  pairs: readonly Pair[],
  sides: Sides,
  made: readonly Made[],
): string {
  const parts: string[] = [];
  for (const one of [...lefts.map((at) => sides.left[at]!), ...rights.map((at) => sides.right[at]!)]) {
    if (one.reading.certain) continue;
    const senses = one.reading.candidates.slice(0, 3).map(({ function: name }) => functionOf(name).name);
    const { text, name } = one.lead;
    if (senses.length > 1) parts.push(`“${text}” (${name}) may be ${list(senses, "or")}`);
    else if (senses.length === 0) parts.push(`“${text}” (${name}) is not understood`);
    else parts.push(`“${text}” (${name}) is probably ${senses[0]}`);
  }
  if (pairs.some((pair) => pair.veto === "two outputs"))
    parts.push("both charts call it an output: one of them may be written from the other side");
  if (parts.length === 0) parts.push(named(lefts, rights, sides));
  const already = made.find(({ pair }) => lefts.includes(pair.left) || rights.includes(pair.right));
  if (already) {
    const { left, right } = already.pair;
    parts.push(
      `${sides.left[left]!.lead.name} and ${sides.right[right]!.lead.name} are joined already; a further lead would share them`,
    );
  }
  return parts.join("; ");
}

function named(lefts: readonly number[], rights: readonly number[], sides: Sides): string {
  const names = (of: readonly number[], side: readonly InContext[]): string =>
    list(
      [...new Set(of.map((at) => functionOf(side[at]!.reading.candidates[0]?.function ?? "unknown").name))],
      "and",
    );
  return `${names(lefts, sides.left)} here, ${names(rights, sides.right)} there: they may be one circuit, or not`;
}

function list(items: readonly string[], word: "and" | "or"): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${word} ${items.at(-1)}`;
}
