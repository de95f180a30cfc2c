import { digits, doubts, type Figure } from "../figure.ts";
import { requireBetween, requireNotNegative } from "../require.ts";
import { MATERIALS, type Material } from "./material.ts";
import { IEC_60228_CLASS_5, ISO_6722_1, type ResistanceTable } from "./resistance-tables.ts";

/**
 * What a resistance rests on.
 * `solid`: the metal's law alone. `stranded`: 2 % more for the lay of the strands. The other two are the most that a
 * standard allows a conductor of that size; a size or metal that the table does not have is reckoned from its neighbours
 * in plain copper, and says so.
 */
export type ResistanceBasis = "solid" | "stranded" | "iec-60228-class-5" | "iso-6722-1";

export type ConductorMetal = {
  /** Metal cross-section, mm², above 0 to 1 000. */
  readonly area_mm2: number;
  /** Of the metal, °C, −50 to 200: the range in which the linear law holds. */
  readonly temperature_degC: number;
  readonly material: Material;
  readonly basis: ResistanceBasis;
};

/** Lay of the strands: NEC chapter 9 table 8 stands 1.8 to 2.5 % above solid copper in every size. */
const STRANDING = 1.02;

const TABLES: Readonly<Partial<Record<ResistanceBasis, ResistanceTable>>> = {
  "iec-60228-class-5": IEC_60228_CLASS_5,
  "iso-6722-1": ISO_6722_1,
};

/**
 * Resistance at a temperature over resistance at 20 °C: 1 + α (T − 20).
 * @param temperature_degC of the metal, −50 to 200
 * @throws RangeError outside that range, and for NaN
 * @source IEC 60028: α = 0.00393 per K for copper
 */
export function temperatureFactor(material: Material, temperature_degC: number): number {
  requireBetween("temperature_degC", temperature_degC, -50, 200);
  return 1 + MATERIALS[material].temperatureCoefficient_perK * (temperature_degC - 20);
}

/**
 * Direct-current resistance of one metre of conductor.
 * @returns Ω/m with its formula, table, source and doubt
 * @throws RangeError for an area not in 0 < A ≤ 1 000 mm² or a temperature outside −50 to 200 °C
 * @accuracy the solid law within 0.4 % of NEC chapter 9 table 8; tables are limits, real wire is up to 5 % better
 */
export function resistancePerMetre(metal: ConductorMetal): Figure {
  const { area_mm2, material, temperature_degC, basis } = metal;
  requireArea(area_mm2);
  const factor = temperatureFactor(material, temperature_degC);
  const facts = MATERIALS[material];
  const warm = `${digits(factor, 5)} at ${digits(temperature_degC)} °C`;
  const table = TABLES[basis];
  if (table) return fromTable(table, metal, factor, warm);
  const lay = basis === "solid" ? 1 : STRANDING;
  const rho = facts.resistivity_ohm_mm2_per_m;
  const value = (rho / area_mm2) * lay * factor;
  const laid = lay === 1 ? "" : ` × ${lay} for the lay`;
  return {
    value,
    unit: "Ω/m",
    formula: `R′ = ρ / A · (1 + α (T − 20)) = ${digits(rho, 5)} / ${digits(area_mm2)}${laid} × ${warm} = ${digits(value * 1000)} mΩ/m`,
    table: null,
    source: lay === 1 ? facts.source : `${facts.source}; lay of strands 2 % after NEC chapter 9 table 8`,
    doubt: facts.doubt,
  };
}

function fromTable(table: ResistanceTable, metal: ConductorMetal, factor: number, warm: string): Figure {
  const { area_mm2, material } = metal;
  const facts = MATERIALS[material];
  const listed = listedValue(table, material, area_mm2);
  const times = facts.resistivity_ohm_mm2_per_m / MATERIALS.copper.resistivity_ohm_mm2_per_m;
  const at20 = listed ?? betweenRows(table, area_mm2) * times;
  const value = (at20 / 1000) * factor;
  return {
    value,
    unit: "Ω/m",
    formula: `R′ = R′₂₀ · (1 + α (T − 20)) = ${digits(at20)} mΩ/m × ${warm} = ${digits(value * 1000)} mΩ/m`,
    table: `${table.name}, ${digits(area_mm2)} mm² ${facts.name}`,
    source: table.source,
    doubt:
      listed === undefined
        ? doubts(
            table.doubt,
            facts.doubt,
            `${digits(area_mm2)} mm² ${facts.name} is not in the table; reckoned from its neighbours in plain copper`,
          )
        : table.doubt,
  };
}

/**
 * A size that the table skips, mΩ/m at 20 °C, plain copper: on the power law through its neighbours, so that it stays
 * between them and as cautious as they are; beyond the ends as far above ideal copper as the last row.
 */
function betweenRows(table: ResistanceTable, area_mm2: number): number {
  const rows = [...table.plain];
  const above = rows.findIndex(([area]) => area >= area_mm2);
  const upper = rows[above];
  const lower = above < 0 ? rows.at(-1)! : rows[above - 1];
  if (!upper || !lower) {
    const [area, value] = (upper ?? lower)!;
    return (value * area) / area_mm2;
  }
  const share = Math.log(area_mm2 / lower[0]) / Math.log(upper[0] / lower[0]);
  return lower[1] * (upper[1] / lower[1]) ** share;
}

/**
 * Direct-current resistance of a conductor.
 * @param length_m of the copper itself, metres, 0 or more: out and back count both ways
 * @returns Ω
 * @throws RangeError as `resistancePerMetre`, and for a negative length
 */
export function conductorResistance(metal: ConductorMetal, length_m: number): Figure {
  requireNotNegative("length_m", length_m);
  const perMetre = resistancePerMetre(metal);
  const value = perMetre.value * length_m;
  return {
    ...perMetre,
    value,
    unit: "Ω",
    formula: `${perMetre.formula}; R = R′ · l = ${digits(perMetre.value * 1000)} mΩ/m × ${digits(length_m)} m = ${digits(value * 1000)} mΩ`,
  };
}

/** Throws for an area that no wire has. */
export function requireArea(area_mm2: number): void {
  requireBetween("area_mm2", area_mm2, 0.001, 1000);
}

function listedValue(table: ResistanceTable, material: Material, area_mm2: number): number | undefined {
  if (material === "copper") return table.plain.get(area_mm2);
  return material === "tinned-copper" ? table.tinned.get(area_mm2) : undefined;
}
