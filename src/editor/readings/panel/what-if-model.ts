import type { Readings } from "../../../electrical/operate/readings.ts";
import type { WhatIf } from "../readings-store.ts";

export type Slider = {
  readonly key: "supply_V" | "ambient_degC";
  readonly name: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  /** As shown: what is asked for, or what the harness has. */
  readonly value: number;
  readonly isAsked: boolean;
};

/** The sliders, standing where the readings stand. Volts run over what a battery of the system may show. */
export function slidersOf(readings: Readings, whatIf: WhatIf): readonly Slider[] {
  const { built, harness } = readings.solved;
  return [
    {
      key: "supply_V",
      name: "Battery",
      unit: "V",
      least: built.nominal_V * 0.5,
      most: built.nominal_V * 1.35,
      step: 0.1,
      value: whatIf.supply_V ?? round(built.battery_V),
      isAsked: whatIf.supply_V !== null,
    },
    {
      key: "ambient_degC",
      name: "Ambient",
      unit: "°C",
      least: -40,
      most: 120,
      step: 1,
      value: whatIf.ambient_degC ?? harness.settings.ambient_degC,
      isAsked: whatIf.ambient_degC !== null,
    },
  ];
}

function round(volts: number): number {
  return Math.round(volts * 100) / 100;
}

export type TypedNumber =
  | { readonly ok: true; readonly value: number | null }
  | { readonly ok: false; readonly why: string };

/** A typed what-if; an empty field asks for nothing. */
export function readWhatIf(
  slider: Pick<Slider, "name" | "unit" | "least" | "most">,
  text: string,
): TypedNumber {
  const plain = text.trim().replace(",", ".").replace("−", "-");
  if (plain === "") return { ok: true, value: null };
  const found = /^([+-]?\d+(?:\.\d+)?)\s*(?:V|°?C)?$/i.exec(plain);
  if (!found) return { ok: false, why: `"${text.trim()}" is not a figure in ${slider.unit}.` };
  const value = Number(found[1]);
  const { least, most } = slider;
  if (value < least || value > most)
    return { ok: false, why: `It must lie between ${least} and ${most} ${slider.unit}.` };
  return { ok: true, value };
}

/** "13.2 V, 60 °C, amplifiers at full"; `null` where nothing is asked. */
export function sayWhatIf(whatIf: WhatIf): string | null {
  const said = [
    whatIf.supply_V === null ? "" : `${whatIf.supply_V} V`,
    whatIf.ambient_degC === null ? "" : `${whatIf.ambient_degC} °C`,
    whatIf.amplifiersAtFull ? "amplifiers at full" : "",
  ].filter(Boolean);
  return said.length === 0 ? null : said.join(", ");
}
