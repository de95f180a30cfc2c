import { type Answer, digits, type Figure } from "../figure.ts";
import { requireArea } from "./resistance.ts";

/** How thick the insulation is. Thin wall is what vehicles are built with; medium wall is cross-linked and thicker. */
export type InsulationWall = "thin" | "medium";

type DiameterRow = readonly [area_mm2: number, diameter_mm: number];
type DiameterTable = {
  readonly name: string;
  readonly source: string;
  readonly doubt: string | null;
  readonly rows: readonly DiameterRow[];
};

const TABLES: Readonly<Record<InsulationWall, DiameterTable>> = {
  thin: {
    name: "thin-wall vehicle cable, largest outside diameter",
    source:
      "a cable distributor's sheet for ISO 6722 class B thin-wall PVC, 0.5 to 10 mm²; other sizes ISO 6722-1",
    doubt: "sizes below 0.5, 5 mm², and above 10 mm² are from memory",
    rows: [
      [0.13, 1.05],
      [0.22, 1.2],
      [0.35, 1.4],
      [0.5, 1.7],
      [0.75, 1.9],
      [1, 2.1],
      [1.5, 2.4],
      [2, 2.8],
      [2.5, 3],
      [3, 3.4],
      [4, 3.7],
      [5, 4.2],
      [6, 4.3],
      [10, 6],
      [16, 7.2],
      [25, 8.7],
      [35, 10.4],
      [50, 12.2],
      [70, 14.4],
      [95, 16.7],
      [120, 18.7],
    ],
  },
  medium: {
    name: "medium-wall cross-linked cable, outside diameter",
    source: "a wire supplier's sheet for SAE J1128 medium wall, 20 to 8 AWG",
    doubt: null,
    rows: [
      [0.5176, 2.4],
      [0.823, 2.6],
      [1.309, 3],
      [2.081, 3.5],
      [3.309, 4.1],
      [5.261, 4.8],
      [8.366, 5.9],
    ],
  },
};

/**
 * Outside diameter of a wire, insulation included.
 * Between two sizes of the table the diameter follows the power law through both; beyond it nothing is said.
 * @param area_mm2 metal cross-section, mm²
 * @returns mm, or why it is not known
 * @throws RangeError for an area not in 0.001 to 1 000 mm²
 */
export function outsideDiameter(area_mm2: number, wall: InsulationWall): Answer {
  requireArea(area_mm2);
  const table = TABLES[wall];
  const above = table.rows.findIndex(([area]) => area >= area_mm2 * 0.999);
  const upper = table.rows[above];
  if (upper && Math.abs(upper[0] / area_mm2 - 1) <= 0.001) return listed(table, upper);
  const lower = table.rows[above - 1];
  if (!upper || !lower) {
    const [first] = table.rows[0]!;
    const [last] = table.rows.at(-1)!;
    return {
      unknown: `${digits(area_mm2)} mm² lies outside the table of ${table.name} (${first} to ${last} mm²)`,
    };
  }
  const share = Math.log(area_mm2 / lower[0]) / Math.log(upper[0] / lower[0]);
  const value = lower[1] * (upper[1] / lower[1]) ** share;
  return {
    value,
    unit: "mm",
    formula: `between ${lower[0]} mm² (${lower[1]} mm) and ${upper[0]} mm² (${upper[1]} mm), on the power law through both: ${digits(value, 3)} mm`,
    table: table.name,
    source: table.source,
    doubt: [table.doubt, "this size is not in the table; read between its neighbours"]
      .filter(Boolean)
      .join("; "),
  };
}

function listed(table: DiameterTable, [area_mm2, value]: DiameterRow): Figure {
  return {
    value,
    unit: "mm",
    formula: `${digits(area_mm2)} mm²: ${value} mm`,
    table: table.name,
    source: table.source,
    doubt: table.doubt,
  };
}
