import { FUNCTIONS } from "../../../src/catalogue/functions.ts";
import type { Chart, Lead, ReadCharts } from "../../../src/match/chart.ts";
import { isColourName, type Pair, type TrueRow } from "./truth.ts";

const NAMES = new Map<string, string>(FUNCTIONS.map((one) => [one.id, one.name]));

/**
 * Reads a pair's charts as a reader would that knows the answer: parts the matching from the reading when a fault is
 * sought. The first function is the likeliest, and a row with a `?` is not certain. Where the maker of a chart told two
 * leads of one function apart by words alone, that is lost.
 */
export function readAsKnown(pair: Pair): (text: string) => ReadCharts {
  const charts = [chartOf(pair.left), chartOf(pair.right)] as const;
  let isLeft = false;
  return () => {
    isLeft = !isLeft;
    return { charts: pair.rightText === "" ? charts : [charts[isLeft ? 0 : 1]], remarks: [] };
  };
}

const chartOf = (rows: readonly TrueRow[]): Chart => ({
  title: "",
  leads: rows.map(leadOf),
  notes: [],
  unread: [],
});

function leadOf(row: TrueRow, index: number): Lead {
  const [base, tracer] = row.colours[0]!.split("/");
  const ids = row.functions.filter((id) => id !== "?" && id !== "*");
  const isDoubtful = ids.length !== row.functions.length;
  return {
    name: row.name,
    label: isColourName(row) || row.name.startsWith("@") ? null : row.name,
    text: NAMES.get(ids[0] ?? "") ?? "",
    reading: {
      candidates: ids.map((id, at) => ({ function: id, share: shareOf(at, ids.length) })),
      certain: !isDoubtful && ids.length > 0,
    },
    colour: base === "-" || base === "*" ? null : ({ base, tracer: tracer ?? null } as Lead["colour"]),
    colourText: "",
    area_mm2: row.area_mm2,
    current_A: null,
    fuse_A: null,
    direction: "unknown",
    isUnused: ids[0] === "not-used",
    kept: [],
    line: row.name.startsWith("@") ? Number(row.name.slice(1)) : index + 1,
    source: row.name,
  };
}

/** Of several functions the first has two thirds, and the others part the rest. */
const shareOf = (at: number, of: number): number => (of === 1 ? 1 : at === 0 ? 2 / 3 : 1 / 3 / (of - 1));
