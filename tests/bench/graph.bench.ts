import { apply } from "../../src/graph/edits/apply.ts";
import type { Harness, WireId } from "../../src/graph/harness.ts";
import { emptyHarness } from "../../src/graph/make.ts";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { generate } from "./generate.ts";

/** Reading, writing and one edit at three sizes, then what nonsense costs at its worst. */
export async function bench(): Promise<string[]> {
  const lines: string[] = [];
  for (const size of [100, 1000, 10_000]) {
    const harness = generate(size);
    const text = serialise(harness);
    const rounds = size > 5000 ? 5 : 15;
    const read = median(rounds, () => parse(text));
    const written = median(rounds, () => serialise(harness));
    const edited = median(rounds * 10, (round) => recolour(harness, round));
    const wires = Object.keys(harness.wires).length;
    lines.push(
      `${wires} wires, ${(text.length / 1e6).toFixed(1)} MB: parse ${read}, serialise ${written}, recolour one wire ${edited}`,
    );
  }
  const filled = (field: string, content: string) =>
    serialise(emptyHarness()).replace(`"${field}": {}`, `"${field}": ${content}`);
  const bad = Array.from({ length: 90_000 }, (_, index) => `"w:${index}": {"id": "w:${index}"}`).join(",\n");
  const nonsense: readonly (readonly [string, string])[] = [
    ["50 MB of one letter", "x".repeat(50e6)],
    ["50 MB of line feeds, then a mistake", `[0,${"\n".repeat(50e6)}`],
    ["90 000 bad entries", filled("wires", `{\n${bad}\n}`)],
    ["3 million numbers in one part", filled("parts", `{"p:1": {"cavities": [${"0,".repeat(3e6)}0]}}`)],
    ["4 million values that are no harness", `[${"0,".repeat(3_999_990)}0]`],
  ];
  for (const [name, text] of nonsense) lines.push(`${name}: refused in ${median(1, () => parse(text))}`);
  return lines;
}

function recolour(harness: Harness, round: number): void {
  const ids = Object.keys(harness.wires) as WireId[];
  const colour = { base: "BK", tracer: (["WH", "RD", "YE"] as const)[round % 3]! } as const;
  const result = apply(harness, { kind: "change-wire", wire: ids[round % ids.length]!, changes: { colour } });
  if (!result.ok) throw new Error(result.why);
}

function median(rounds: number, work: (round: number) => unknown): string {
  const times: number[] = [];
  for (let round = 0; round < rounds; round++) {
    const start = performance.now();
    work(round);
    times.push(performance.now() - start);
  }
  const middle = times.sort((a, b) => a - b)[rounds >> 1]!;
  return `${middle < 10 ? middle.toFixed(2) : Math.round(middle)} ms`;
}
