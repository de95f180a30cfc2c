import { apply } from "../../src/graph/edits/apply.ts";
import type { Edit } from "../../src/graph/edits/edit.ts";
import type { Harness, PartId, WireId } from "../../src/graph/harness.ts";
import { trace } from "../../src/graph/trace.ts";
import { type Checked, check, recheck } from "../../src/rules/check.ts";
import { generate } from "./generate.ts";
import { cleanHarness, KINDS } from "./planted/clean.ts";
import { alarms, judge, PLANTERS } from "./planted/judge.ts";
import { many } from "./planted/many.ts";
import { SOUND_SAMPLES, sample } from "./planted/plant-samples.ts";

const SEEDS = Number(process.env.SEEDS ?? 4);
const CLEAN_SEEDS = 12;

/** Planted faults: found, missed, what was said beside them; alarms on sound harnesses; time. */
export async function bench(): Promise<string[]> {
  return [...plantedFaults(), "", ...soundHarnesses(), "", ...times()];
}

type Row = {
  found: number;
  missed: number;
  strays: number;
  apart: number;
  weak: number;
  misses: Set<string>;
};

function plantedFaults(): string[] {
  const rows = new Map<string, Row>();
  const heard = new Map<string, number>();
  for (const planter of PLANTERS) {
    const row = rows.get(planter.entry) ?? {
      found: 0,
      missed: 0,
      strays: 0,
      apart: 0,
      weak: 0,
      misses: new Set(),
    };
    rows.set(planter.entry, row);
    for (let seed = 1; seed <= SEEDS; seed++) {
      const verdict = judge(planter, seed);
      if (verdict.found) row.found++;
      else {
        row.missed++;
        row.misses.add(planter.name);
      }
      row.strays += verdict.strays.length;
      row.apart += verdict.apart.length;
      row.weak += verdict.weak.length;
      for (const rule of new Set(verdict.hits.map((finding) => finding.rule)))
        heard.set(rule, (heard.get(rule) ?? 0) + 1);
    }
  }
  const lines = [
    `${PLANTERS.length} ways to go wrong, ${SEEDS} seeds each`,
    "entry  found  missed  stray  apart  weak",
  ];
  const total: Row = { found: 0, missed: 0, strays: 0, apart: 0, weak: 0, misses: new Set() };
  const counts = ({ found, missed, strays, apart, weak }: Row) =>
    [found, missed, strays, apart, weak]
      .map((count, index) => String(count).padStart([5, 6, 6, 6, 5][index]!))
      .join(" ");
  for (const [entry, row] of [...rows].sort(([a], [b]) => (a < b ? -1 : 1))) {
    lines.push(
      `${entry}   ${counts(row)}  ${row.misses.size ? `missed: ${[...row.misses].join("; ")}` : ""}`,
    );
    for (const key of ["found", "missed", "strays", "apart", "weak"] as const) total[key] += row[key];
  }
  const share = ((100 * total.found) / (total.found + total.missed)).toFixed(1);
  lines.push(`all   ${counts(total)}  ${share} % found (target 99)`);
  lines.push("stray: danger or fault elsewhere; apart: at the very place, but not told as one with it", "");
  lines.push(`rules that found a planted fault: ${heard.size}`);
  for (const [rule, count] of [...heard].sort()) lines.push(`${String(count).padStart(5)}  ${rule}`);
  return lines;
}

function soundHarnesses(): string[] {
  const lines = ["sound harnesses     count  wires  danger or fault  weak"];
  const add = (name: string, harnesses: readonly Harness[]) => {
    const sizes = harnesses.map((harness) => Object.keys(harness.wires).length);
    const heard = harnesses.map(alarms);
    const rules = new Set(
      heard.flatMap(({ grave, weak }) => [...grave, ...weak].map((finding) => finding.rule)),
    );
    const sum = (key: "grave" | "weak") => heard.reduce((count, one) => count + one[key].length, 0);
    const spread = `${Math.min(...sizes)}-${Math.max(...sizes)}`;
    lines.push(
      `${name.padEnd(20)}${String(harnesses.length).padStart(5)}  ${spread.padStart(6)}  ${String(sum("grave")).padStart(15)}  ${String(sum("weak")).padStart(4)}  ${[...rules].join(" ")}`,
    );
  };
  for (const kind of Object.keys(KINDS))
    add(
      kind,
      Array.from({ length: CLEAN_SEEDS }, (_, seed) => cleanHarness(kind, seed + 1)),
    );
  add("samples", SOUND_SAMPLES.map(sample));
  return lines;
}

function times(): string[] {
  const lines: string[] = [];
  const makers: readonly (readonly [string, (wires: number) => Harness])[] = [
    ["sound, many", many],
    ["stations", (wires) => generate(wires)],
  ];
  for (const [name, make] of makers)
    for (const size of [1000, 10_000]) {
      const harness = make(size);
      const wires = Object.keys(harness.wires).length;
      const target = size === 10_000 ? " (target 250 ms)" : "";
      lines.push(`${name}, ${wires} wires: whole check from cold ${cold(harness)}${target}`);
      for (const [label, times_ms] of edited(harness, size > 5000 ? 12 : 40))
        lines.push(
          `  after an edit: ${label.padEnd(20)} ${spread(times_ms)}${size === 1000 ? " (target 16 ms)" : ""}`,
        );
    }
  return lines;
}

/** Every value that is remembered by identity is forgotten by making the harness anew. */
function cold(harness: Harness): string {
  const text = JSON.stringify(harness);
  const times_ms: number[] = [];
  for (let round = 0; round < 5; round++) {
    const fresh = JSON.parse(text) as Harness;
    const start = performance.now();
    check(fresh, trace(fresh));
    times_ms.push(performance.now() - start);
  }
  return spread(times_ms);
}

function edited(harness: Harness, rounds: number): readonly (readonly [string, readonly number[]])[] {
  const wires = Object.keys(harness.wires) as WireId[];
  const parts = Object.keys(harness.parts) as PartId[];
  const wireAt = (round: number) => harness.wires[wires[(round * 37 + 5) % wires.length]!]!;
  const connectors = Object.values(harness.parts).filter((part) => part.kind === "connector");
  const kinds: readonly (readonly [string, (round: number) => Edit])[] = [
    [
      "size",
      (round) => ({
        kind: "change-wire",
        wire: wireAt(round).id,
        changes: { area_mm2: 1 + (round % 7) / 10 },
      }),
    ],
    [
      "label",
      (round) => ({ kind: "change-wire", wire: wireAt(round).id, changes: { label: `mark ${round}` } }),
    ],
    [
      "move a wire's end",
      (round) => ({
        kind: "change-wire",
        wire: wireAt(round).id,
        changes: { ends: [wireAt(round).ends[0], wireAt(round + 1).ends[1]] },
      }),
    ],
    [
      "rename a part",
      (round) => ({
        kind: "change-part",
        part: parts[(round * 37) % parts.length]!,
        changes: { designation: `Q${round}` },
      }),
    ],
    [
      "add a wire",
      (round) => ({
        kind: "add-wire",
        wire: {
          ...wireAt(round),
          id: `w:new${round}` as WireId,
          designation: `WN${round}`,
          ends: [wireAt(round).ends[0], wireAt(round + 3).ends[0]],
        },
      }),
    ],
    [
      "change a function",
      (round) => ({
        kind: "change-cavity",
        part: connectors[round % connectors.length]!.id,
        contact: 1,
        changes: { function: round % 2 ? "illumination" : "reverse" },
      }),
    ],
  ];
  return kinds.map(([label, edit]) => {
    let before: Checked = recheck(null, harness, trace(harness));
    const times_ms: number[] = [];
    for (let round = 0; round < rounds; round++) {
      const result = apply(before.harness, edit(round));
      if (!result.ok) throw new Error(result.why);
      const start = performance.now();
      const after = recheck(before, result.harness, trace(result.harness));
      times_ms.push(performance.now() - start);
      before = after;
    }
    return [label, times_ms.slice(Math.floor(rounds / 4))] as const;
  });
}

function spread(times_ms: readonly number[]): string {
  const sorted = [...times_ms].sort((a, b) => a - b);
  const at = (share: number) => sorted[Math.floor(share * (sorted.length - 1))]!.toFixed(1);
  return `${at(0.5)} ms (least ${at(0)}, p95 ${at(0.95)})`;
}
