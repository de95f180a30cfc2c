/** What a conductor is made of. The CCA numbers are the copper's share of the cross-section in per cent. */
export type Material = "copper" | "tinned-copper" | "cca-15" | "cca-10";

export type MaterialFacts = {
  readonly name: string;
  /** At 20 °C. 1 Ω·mm²/m = 1e-6 Ω·m. */
  readonly resistivity_ohm_mm2_per_m: number;
  /** At 20 °C, constant mass. */
  readonly temperatureCoefficient_perK: number;
  readonly density_g_per_cm3: number;
  readonly source: string;
  readonly doubt: string | null;
};

/** Standard annealed copper, the 100 % of the International Annealed Copper Standard. */
const IACS_ohm_mm2_per_m = 1 / 58;

const CLAD_DOUBT =
  "copper-clad aluminium is reckoned at the least conductivity its standard allows (makers' tables are 2 to 4 % better); its temperature coefficient is from memory";

export const MATERIALS: Readonly<Record<Material, MaterialFacts>> = {
  copper: {
    name: "copper",
    resistivity_ohm_mm2_per_m: IACS_ohm_mm2_per_m,
    temperatureCoefficient_perK: 0.00393,
    density_g_per_cm3: 8.89,
    source: "IEC 60028 (1925): 1/58 Ω·mm²/m at 20 °C, 0.00393 per K; density 8.89 g/cm³ from memory",
    doubt: null,
  },
  "tinned-copper": {
    name: "tinned copper",
    resistivity_ohm_mm2_per_m: IACS_ohm_mm2_per_m * 1.04,
    temperatureCoefficient_perK: 0.00393,
    density_g_per_cm3: 8.89,
    source: "NEC chapter 9 table 8, coated against uncoated stranded: 3.5 to 6.3 % more",
    doubt:
      "tin is reckoned at 4 % more resistance in every size; the table's own steps run from 3.5 to 6.3 %",
  },
  "cca-15": {
    name: "copper-clad aluminium, 15 % copper",
    resistivity_ohm_mm2_per_m: IACS_ohm_mm2_per_m / 0.644,
    temperatureCoefficient_perK: 0.00405,
    density_g_per_cm3: 3.626,
    source: "ASTM B566 class 15A as a wire maker prints it: at least 64.4 % IACS, 0.131 lb/in³",
    doubt: CLAD_DOUBT,
  },
  "cca-10": {
    name: "copper-clad aluminium, 10 % copper",
    resistivity_ohm_mm2_per_m: IACS_ohm_mm2_per_m / 0.629,
    temperatureCoefficient_perK: 0.00405,
    density_g_per_cm3: 3.322,
    source: "ASTM B566 class 10A as a wire maker prints it: at least 62.9 % IACS, 0.120 lb/in³",
    doubt: CLAD_DOUBT,
  },
};
