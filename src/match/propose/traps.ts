import { writeColour } from "../../catalogue/colours.ts";
import { functionOf } from "../../catalogue/functions.ts";
import type { Colour } from "../../graph/harness.ts";
import type { InContext } from "./context.ts";
import { isPower } from "./kin.ts";
import type { Pair } from "./pairs.ts";
import type { Sides } from "./propose.ts";

/**
 * What a person could do wrong with this join at the bench: join by colour. A colour trap is a lead whose colour
 * stands on another lead of the other side, with another meaning, where one of the two carries power.
 */
export function trapsOf(pair: Pair, sides: Sides): readonly string[] {
  const left = sides.left[pair.left]!;
  const right = sides.right[pair.right]!;
  const traps: string[] = [];
  for (const [own, partner, others, where] of [
    [left, right, sides.right, "right"],
    [right, left, sides.left, "left"],
  ] as const) {
    if (!own.lead.colour || sameColour(own.lead.colour, partner.lead.colour)) continue;
    const twin = others.find((one) => one !== partner && sameColour(one.lead.colour, own.lead.colour));
    const [means] = twin?.reading.candidates ?? [];
    if (!twin || !means || means.function === pair.function) continue;
    if (!isPower(means.function) && !isPower(pair.function)) continue;
    const letters = writeColour(own.lead.colour);
    const name = twin.lead.name === letters ? "" : `${twin.lead.name}, `;
    traps.push(
      `${letters} is the ${functionOf(pair.function).name} here; on the ${where} ${letters} is ${name}the ${functionOf(means.function).name}. Join by ${twin.lead.label === null && partner.lead.label === null ? "function" : "label"}, not by colour.`,
    );
  }
  const { current_A, fuse_A } = left.lead;
  const draws = right.lead.current_A;
  if (fuse_A !== null && draws !== null && draws > fuse_A)
    traps.push(`${right.lead.name} draws ${draws} A; ${left.lead.name} is fused at ${fuse_A} A.`);
  else if (isOverloaded(left, right))
    traps.push(`${right.lead.name} draws ${draws} A; ${left.lead.name} gives ${current_A} A.`);
  return traps;
}

function isOverloaded(left: InContext, right: InContext): boolean {
  return (
    left.lead.direction === "gives" &&
    right.lead.direction === "takes" &&
    left.lead.current_A !== null &&
    right.lead.current_A !== null &&
    right.lead.current_A > left.lead.current_A
  );
}

export function sameColour(a: Colour | null, b: Colour | null): boolean {
  return a !== null && b !== null && a.base === b.base && a.tracer === b.tracer;
}
