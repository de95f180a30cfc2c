/** Largest resistances that standards allow at 20 °C, mΩ/m (the same number as Ω/km), by cross-section in mm². */
export type ResistanceTable = {
  readonly name: string;
  readonly source: string;
  readonly doubt: string | null;
  /** mm² → mΩ/m, plain copper */
  readonly plain: ReadonlyMap<number, number>;
  /** mm² → mΩ/m, tinned copper; empty where not at hand */
  readonly tinned: ReadonlyMap<number, number>;
};

/** Flexible conductors. The sizes below 0.5 mm² are in the German extension of the table. */
export const IEC_60228_CLASS_5: ResistanceTable = {
  name: "IEC 60228 class 5, maximum at 20 °C",
  source: "IEC 60228 table 3, class 5, as reprinted in four cable makers' tables; below 0.5 mm² DIN VDE 0295",
  doubt: null,
  plain: new Map([
    [0.05, 380],
    [0.08, 237],
    [0.14, 134],
    [0.22, 96],
    [0.25, 76],
    [0.34, 53],
    [0.5, 39],
    [0.75, 26],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
  ]),
  tinned: new Map([
    [0.5, 40.1],
    [0.75, 26.7],
    [1, 20],
    [1.5, 13.7],
    [2.5, 8.21],
    [4, 5.09],
    [6, 3.39],
    [10, 1.95],
    [16, 1.24],
    [25, 0.795],
  ]),
};

export const ISO_6722_1: ResistanceTable = {
  name: "ISO 6722-1, maximum at 20 °C",
  source: "ISO 6722-1, plain copper",
  doubt: "from memory; stands at a steady 0.95 to 0.96 of IEC 60228 class 5 where both have the size",
  plain: new Map([
    [0.13, 136],
    [0.22, 84.4],
    [0.35, 54.4],
    [0.5, 37.1],
    [0.75, 24.7],
    [1, 18.5],
    [1.5, 12.7],
    [2, 9.42],
    [2.5, 7.6],
    [3, 6.15],
    [4, 4.71],
    [5, 3.94],
    [6, 3.14],
    [10, 1.82],
    [16, 1.16],
    [25, 0.743],
  ]),
  tinned: new Map(),
};
