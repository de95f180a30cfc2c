import { readFileSync } from "node:fs";
import type { Harness, Part, PartId, Wire } from "../../../src/graph/harness.ts";

/** A sample of the workshop, as it is shipped. */
export function sample(id: string): Harness {
  return JSON.parse(
    readFileSync(new URL(`../../../samples/${id}.harness.json`, import.meta.url), "utf8"),
  ) as Harness;
}

export function partNamed(harness: Harness, designation: string): Part {
  const found = Object.values(harness.parts).find((part) => part.designation === designation);
  if (!found) throw new Error(`the sample has no ${designation}`);
  return found;
}

export function idOf(harness: Harness, designation: string): PartId {
  return partNamed(harness, designation).id;
}

export function wireNamed(harness: Harness, designation: string): Wire {
  const found = Object.values(harness.wires).find((wire) => wire.designation === designation);
  if (!found) throw new Error(`the sample has no ${designation}`);
  return found;
}
