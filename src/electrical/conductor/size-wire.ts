import { digits, type Figure, isKnown } from "../figure.ts";
import { requireNotNegative, requirePositive } from "../require.ts";
import type { AmpacityBook, AmpacityConditions } from "./ampacity-book.ts";
import { voltageDrop } from "./drop.ts";
import type { Material } from "./material.ts";
import type { ResistanceBasis } from "./resistance.ts";
import type { StandardSize } from "./sizes.ts";

export type SizeTask = {
  /** For good, amperes. */
  readonly current_A: number;
  /** Of copper that the limit is for, metres: out and back where both are wires. */
  readonly length_m: number;
  /** Volts that this wire may lose. */
  readonly drop_V: number;
  readonly system_V: number;
  /** Of the metal when loaded, °C. */
  readonly temperature_degC: number;
  readonly material: Material;
  readonly basis: ResistanceBasis;
  readonly book: AmpacityBook;
  readonly conditions: AmpacityConditions;
  /** What may be chosen, thin to thick. */
  readonly sizes: readonly StandardSize[];
  /** Thinner wire is not used, whatever the sums say (it breaks); mm². */
  readonly least_mm2?: number;
};

export type Sized = {
  readonly ok: true;
  readonly size: StandardSize;
  /** Which demand the next thinner size would have failed. */
  readonly decidedBy: "ampacity" | "drop" | "both" | "thinnest";
  readonly ampacity: Figure;
  readonly drop: Figure;
  readonly why: string;
};
export type NotSized = {
  readonly ok: false;
  /** Which demand no size meets. */
  readonly fails: "ampacity" | "drop" | "both";
  readonly why: string;
};

/** Clad aluminium carries less than the copper that the books are written for. */
const CLAD_SHARE: Readonly<Record<Material, number>> = {
  copper: 1,
  "tinned-copper": 1,
  // Equal heat: I ∝ √conductivity, at 64.4 % and 62.9 % IACS.
  "cca-15": Math.sqrt(0.644),
  "cca-10": Math.sqrt(0.629),
};

/**
 * The smallest stocked conductor that carries the current for good and keeps the drop.
 * @returns the size with what decided it, or which demand no size meets
 * @throws RangeError for NaN, negative current or length, a drop or voltage not above 0, an empty list of sizes
 */
export function sizeWire(task: SizeTask): Sized | NotSized {
  requireNotNegative("current_A", task.current_A);
  requireNotNegative("length_m", task.length_m);
  requirePositive("drop_V", task.drop_V);
  if (task.sizes.length === 0) throw new RangeError("no sizes to choose from");
  let before: Tried | null = null;
  let silent = "";
  let best: Tried | null = null;
  for (const size of task.sizes) {
    if (size.area_mm2 < (task.least_mm2 ?? 0) * 0.995) continue;
    const tried = tryOut(task, size);
    if (typeof tried === "string") {
      silent = tried;
      if (best) break;
      continue;
    }
    best = tried;
    if (tried.carries && tried.keeps) return sized(task, tried, before, silent);
    before = tried;
  }
  return notSized(task, best, silent);
}

type Tried = {
  readonly size: StandardSize;
  readonly ampacity: Figure;
  readonly drop: Figure;
  readonly carries: boolean;
  readonly keeps: boolean;
};

function tryOut(task: SizeTask, size: StandardSize): Tried | string {
  const answer = task.book.ampacity(size.area_mm2, task.conditions);
  if (!isKnown(answer)) return answer.unknown;
  const share = CLAD_SHARE[task.material];
  const ampacity =
    share === 1
      ? answer
      : {
          ...answer,
          value: answer.value * share,
          formula: `${answer.formula}; × √conductivity = ${digits(share, 3)} for clad aluminium = ${digits(answer.value * share)} A`,
        };
  const metal = {
    area_mm2: size.area_mm2,
    temperature_degC: task.temperature_degC,
    material: task.material,
    basis: task.basis,
  };
  const { drop } = voltageDrop(metal, task.length_m, task.current_A, task.system_V);
  return {
    size,
    ampacity,
    drop,
    carries: ampacity.value >= task.current_A,
    keeps: drop.value <= task.drop_V,
  };
}

function sized(task: SizeTask, found: Tried, before: Tried | null, silent: string): Sized {
  const decidedBy = decidingDemand(before);
  const facts = `${found.size.name} carries ${digits(found.ampacity.value, 3)} A and loses ${digits(found.drop.value, 3)} V of ${digits(task.drop_V, 3)} V`;
  const next = before
    ? `; ${before.size.name} ${failing(task, before)}`
    : silent === ""
      ? ""
      : `; thinner: ${silent}`;
  return {
    ok: true,
    size: found.size,
    decidedBy,
    ampacity: found.ampacity,
    drop: found.drop,
    why: `${facts}${next}`,
  };
}

function decidingDemand(before: Tried | null): Sized["decidedBy"] {
  if (!before) return "thinnest";
  if (!before.carries && !before.keeps) return "both";
  return before.carries ? "drop" : "ampacity";
}

function failing(task: SizeTask, tried: Tried): string {
  const parts: string[] = [];
  if (!tried.carries) {
    parts.push(`carries ${digits(tried.ampacity.value, 3)} A where ${digits(task.current_A, 3)} A flow`);
  }
  if (!tried.keeps) parts.push(`loses ${digits(tried.drop.value, 3)} V of ${digits(task.drop_V, 3)} V`);
  return parts.join(" and ");
}

function notSized(task: SizeTask, best: Tried | null, silent: string): NotSized {
  if (!best) return { ok: false, fails: "ampacity", why: `no size of ${task.book.name} fits: ${silent}` };
  const fails = !best.carries && !best.keeps ? "both" : best.carries ? "drop" : "ampacity";
  const thicker = silent === "" ? "" : `; thicker or thinner: ${silent}`;
  return { ok: false, fails, why: `even ${best.size.name} ${failing(task, best)}${thicker}` };
}
