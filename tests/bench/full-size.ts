import { readFileSync } from "node:fs";
import type { Harness } from "../../src/graph/harness.ts";
import { parse } from "../../src/graph/parse/parse.ts";
import { generate } from "./generate.ts";

/** A generated harness of which it is stated what its boxes and lamps draw, so that there is something to solve. */
export function drawing(wireCount: number): Harness {
  const harness = generate(wireCount);
  const parts = Object.values(harness.parts).map((part) => {
    if (part.kind === "load") return { ...part, current_A: 4.5 };
    if (part.kind !== "connector" || part.belongsTo.side !== "equipment") return part;
    const cavities = part.cavities.map((cavity) => {
      const current_A = DRAWN_A[cavity.function];
      return current_A === undefined ? cavity : { ...cavity, current_A };
    });
    return { ...part, cavities };
  });
  return { ...harness, parts: Object.fromEntries(parts.map((part) => [part.id, part])) };
}

const DRAWN_A: Readonly<Record<string, number>> = { "constant-feed": 6, "switched-feed": 0.4 };

/** A sample beside itself, as often as makes so many wires: every kind of part, runs and cables. */
export function copies(sample: string, wireCount: number): Harness {
  const text = readFileSync(new URL(`../../samples/${sample}.harness.json`, import.meta.url), "utf8");
  const read = parse(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const { harness } = read;
  const sections = ["parts", "wires", "runs", "cables"] as const;
  const ids = new Set(sections.flatMap((section) => Object.keys(harness[section])));
  const found: Record<string, Record<string, unknown>> = { parts: {}, wires: {}, runs: {}, cables: {} };
  const often = Math.max(1, Math.round(wireCount / Object.keys(harness.wires).length));
  for (let copy = 0; copy < often; copy++) {
    const renamed = (value: unknown, field = ""): unknown => {
      if (typeof value === "string")
        return ids.has(value) || field === "designation" ? `${value}${copy ? `-${copy}` : ""}` : value;
      if (Array.isArray(value)) return value.map((one) => renamed(one));
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(Object.entries(value).map(([key, one]) => [renamed(key), renamed(one, key)]));
    };
    for (const section of sections) Object.assign(found[section]!, renamed(harness[section]));
  }
  return { ...harness, ...found, waivers: {} } as unknown as Harness;
}
