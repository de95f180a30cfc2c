import type { Harness } from "../../../src/graph/harness.ts";
import { emptyHarness } from "../../../src/graph/make.ts";
import { cleanHarness, KINDS } from "./clean.ts";

/** Sound harnesses of all kinds of 12 V side by side, till there are so many wires; names do not meet. */
export function many(wireCount: number): Harness {
  const start = emptyHarness();
  const grown = {
    parts: { ...start.parts },
    wires: { ...start.wires },
    cables: { ...start.cables },
    runs: { ...start.runs },
  };
  const kinds = Object.keys(KINDS).filter((kind) => kind !== "boat");
  for (let number = 1, wires = 0; wires < wireCount; number++) {
    const piece = cleanHarness(kinds[number % kinds.length]!, number);
    if (piece.settings.systemVoltage_V !== 12) continue;
    const { parts, wires: leads, cables, runs } = renamed(piece, `${number}`);
    Object.assign(grown.parts, parts);
    Object.assign(grown.wires, leads);
    Object.assign(grown.cables, cables);
    Object.assign(grown.runs, runs);
    wires += Object.keys(leads).length;
  }
  return { ...start, ...grown };
}

/** Every id and designation with a number of its own in front, shells and labels too. */
function renamed(
  { parts, wires, cables, runs }: Harness,
  number: string,
): Pick<Harness, "parts" | "wires" | "cables" | "runs"> {
  const text = JSON.stringify({ parts, wires, cables, runs })
    .replace(/"([pwcr]):/g, `"$1:n${number}-`)
    .replace(/"designation":"([A-Z]+)/g, `"designation":"$1${number}0`)
    .replace(/"shell":"/g, `"shell":"job ${number} `);
  return JSON.parse(text) as Pick<Harness, "parts" | "wires" | "cables" | "runs">;
}
