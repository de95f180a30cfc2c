import { type Pinout, row } from "./pinout.ts";

const SOURCE =
  'A logger maker\'s documentation, "OBD-II J1962 Connector Pinout"; "OBD II diagnostic connector pin assignment"; a tool retailer\'s article, "OBD-II diagnostic connector"; a diagnostic tool\'s user manual; a data-acquisition manual, "Vehicle Diagnostic Connectors"; article "SAE J1962-2016". The standard itself was not read.';

const OWN = "Maker's use.";

function diagnostics(type: "A" | "B", voltage_V: 12 | 24, feed_A: number): Pinout {
  return {
    id: `sae-j1962-${type.toLowerCase()}`,
    group: "diagnostics",
    title: `SAE J1962 diagnostic connector, 16-way, type ${type}, ${voltage_V} V`,
    side: "vehicle",
    form: "housing",
    shell: `SAE J1962 ${type}`,
    voltage_V,
    face: null,
    source: SOURCE,
    edition: "2016; the same as ISO 15031-3",
    caution: `Two rows of eight, 1 to 8 in the wider row (from memory). 16 is not switched: what stays plugged in drains the battery. The maker's own cavities are not dead: switched feeds, second K lines and further CAN pairs are found there. Types A and B are keyed apart.`,
    rows: [
      row("1", "unknown", "unknown", null, { note: OWN }),
      row("2", "j1850-plus", "both", null, { note: "With either modulation." }),
      row("3", "unknown", "unknown", null, { note: OWN }),
      row("4", "ground", "gives", null, { note: "Chassis ground." }),
      row("5", "sense-ground", "gives", null, { note: "Signal ground." }),
      row("6", "can-high", "both", null, { note: "ISO 15765-4, SAE J2284." }),
      row("7", "k-line", "both", null, { note: "ISO 9141-2, ISO 14230-4." }),
      row("8", "unknown", "unknown", null, { note: OWN }),
      row("9", "unknown", "unknown", null, {
        confidence: "disputed",
        note: `${OWN} One source has low-speed CAN low here.`,
      }),
      row("10", "j1850-minus", "both", null, {
        confidence: "disputed",
        note: "With pulse-width modulation only, by two sources; the variable one has no second wire.",
      }),
      row("11", "unknown", "unknown", null, { note: OWN }),
      row("12", "unknown", "unknown", null, { note: OWN }),
      row("13", "unknown", "unknown", null, { note: OWN }),
      row("14", "can-low", "both"),
      row("15", "l-line", "both", null, { note: "Optional." }),
      row("16", "constant-feed", "gives", null, {
        current_A: feed_A,
        note: `Battery plus, not switched. The ${feed_A} A are of one source.`,
      }),
    ],
  };
}

/** For 12 V vehicles. */
export const SAE_J1962_A: Pinout = diagnostics("A", 12, 4);
/** For 24 V vehicles. */
export const SAE_J1962_B: Pinout = diagnostics("B", 24, 2);
