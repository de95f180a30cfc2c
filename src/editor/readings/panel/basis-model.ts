import { AMPACITY_BOOKS } from "../../../electrical/conductor/ampacity-books.ts";
import { FUSE_RULES } from "../../../electrical/fuse/choose.ts";
import type { Edit } from "../../../graph/edits/edit.ts";
import { refused } from "../../../graph/edits/edit.ts";
import type { Harness, Part, PartId, Settings, WireId } from "../../../graph/harness.ts";
import { choiceField, type Field, figureField, lineField } from "../../inspector/fields.ts";
import { SURFACE_NAMES, SURFACES } from "../../inspector/kind-fields.ts";
import { METAL_NAMES, METALS, materialFields } from "../../inspector/wire-fields.ts";

/** What states something that figures rest on: a wire, a part, or the harness's own settings. */
export type Stater = { readonly wire: WireId } | { readonly part: PartId } | "harness";

/** The fields of a thing that figures rest on, and nothing else of it. */
export function basisFields(harness: Harness, of: Stater): readonly Field[] {
  if (of === "harness") return harnessFields(harness.settings);
  if ("wire" in of) {
    const wire = harness.wires[of.wire];
    if (!wire) return [];
    return [
      ...materialFields(harness, wire),
      choiceField("material", "Metal", wire.material, METALS, METAL_NAMES),
    ];
  }
  const part = harness.parts[of.part];
  return part ? partFields(part) : [];
}

function partFields(part: Part): readonly Field[] {
  switch (part.kind) {
    case "supply":
      return [
        figureField("voltage_V", "Volts", part.voltage_V, "V", { least: 0.1, most: 60, required: true }),
        figureField("capacity_Ah", "Capacity", part.capacity_Ah, "Ah", { least: 0.01, most: 10_000 }),
        figureField("resistance_ohm", "Resistance inside", part.resistance_ohm, "Ω", { most: 1000 }),
      ];
    case "fuse":
      return [
        figureField("rating_A", "Rating", part.rating_A, "A", { least: 0.01, most: 1000 }),
        choiceField("form", "Form", part.form, [
          "unknown",
          "mini",
          "regular",
          "maxi",
          "glass",
          "bolt-down",
          "breaker",
        ]),
      ];
    case "relay":
      return [figureField("coil_ohm", "Coil", part.coil_ohm, "Ω", { least: 0.01, most: 10_000 })];
    case "resistor":
      return [figureField("resistance_ohm", "Resistance", part.resistance_ohm, "Ω", { most: 1e9 })];
    case "ground":
      return [choiceField("surface", "Surface", part.surface, SURFACES, SURFACE_NAMES)];
    case "load":
      return [
        figureField("current_A", "Current it draws", part.current_A, "A", { most: 10_000 }),
        choiceField(
          "behaviour",
          "Its current",
          part.behaviour,
          ["unknown", "resistance", "constant-current", "constant-power", "filament"],
          {
            unknown: "as is usual for its type",
            resistance: "follows the volts (a resistance)",
            "constant-current": "stays the same at any volts",
            "constant-power": "falls as the volts rise (constant power)",
            filament: "of a filament lamp",
          },
        ),
        figureField("standby_A", "Current with the key off", part.standby_A, "A", { most: 10_000 }),
      ];
    case "speaker":
      return [
        figureField("impedance_ohm", "Impedance", part.impedance_ohm, "Ω", { least: 0.01, most: 1000 }),
        figureField("power_W", "Power it bears", part.power_W, "W", { least: 0.01, most: 100_000 }),
      ];
    case "module":
      return [
        choiceField("outputs", "Speaker outputs", part.outputs, [
          "unknown",
          "bridged",
          "common-negative",
          "none",
        ]),
        figureField("leastLoad_ohm", "Least load of a channel", part.leastLoad_ohm, "Ω", {
          least: 0.01,
          most: 1000,
        }),
        figureField("channelPower_W", "Power of a channel", part.channelPower_W, "W", {
          least: 0.01,
          most: 100_000,
        }),
        figureField("standby_A", "Current asleep", part.standby_A, "A", { most: 10_000 }),
        choiceField("wakes", "It wakes", part.wakes, ["unknown", "by-lead", "by-signal"]),
      ];
    default:
      return [];
  }
}

/** Settings that sums rest on, keyed as `Settings` has them; those of `electrical` under their own names. */
function harnessFields(settings: Settings): readonly Field[] {
  const { electrical } = settings;
  const volts = { least: 0.1, most: 60 };
  const books = ["unknown", ...AMPACITY_BOOKS.map(({ id }) => id)];
  const bookNames = Object.fromEntries(AMPACITY_BOOKS.map(({ id, name }) => [id, name]));
  const rules = ["unknown", ...FUSE_RULES.map(({ id }) => id)] as const;
  return [
    figureField("rest_V", "Battery at rest", electrical.rest_V, "V", volts),
    figureField("running_V", "Engine running", electrical.running_V, "V", volts),
    figureField("cranking_V", "Starter turning", electrical.cranking_V, "V", volts),
    figureField("ambient_degC", "Ambient", settings.ambient_degC, "°C", {
      least: -60,
      most: 150,
      required: true,
    }),
    figureField("engineBay_degC", "Engine bay", electrical.engineBay_degC, "°C", { least: -60, most: 150 }),
    figureField("dropCritical_percent", "Drop allowed, critical", settings.dropCritical_percent, "%", {
      least: 0.1,
      most: 100,
      required: true,
    }),
    figureField("dropOther_percent", "Drop allowed, other", settings.dropOther_percent, "%", {
      least: 0.1,
      most: 100,
      required: true,
    }),
    choiceField("ampacityBook", "Book of ampacity", electrical.ampacityBook, books, {
      ...bookNames,
      unknown: `not chosen: ${AMPACITY_BOOKS[0]!.name}`,
    }),
    choiceField("fuseRule", "Fuse against wire", electrical.fuseRule, rules, {
      "at-most-ampacity": "at most the ampacity",
      "next-size": "or the next rating above it",
      "150-percent": "up to 150 % of the ampacity",
      unknown: "not chosen",
    }),
    figureField("standbyLimit_mA", "Drain allowed, key off", electrical.standbyLimit_mA, "mA", {
      most: 100_000,
    }),
    figureField("chargeFloor_percent", "Charge to keep", electrical.chargeFloor_percent, "%", { most: 100 }),
    figureField("slack_percent", "Slack of a wire", electrical.slack_percent, "%", { most: 100 }),
    figureField("terminations_mm", "Both ends of a wire", electrical.terminations_mm, "mm", { most: 1000 }),
    lineField("currency", "Currency of prices", electrical.currency),
    pricesField(electrical.prices),
  ];
}

type Price = Settings["electrical"]["prices"][number];

/** "0.75: 0.40; 2.5: 1.10": a metre's price by mm². */
function pricesField(prices: readonly Price[]): Field {
  return {
    key: "prices",
    name: "Prices of a metre, by mm²",
    look: "line",
    hint: "0.75: 0.40; 2.5: 1.10",
    text: prices.map(({ area_mm2, perMetre }) => `${area_mm2}: ${perMetre}`).join("; "),
    read: (typed) => {
      const read: Price[] = [];
      for (const piece of typed.split(";")) {
        if (piece.trim() === "") continue;
        const found = /^\s*(\d+(?:[.,]\d+)?)\s*(?:mm²)?\s*:\s*(\d+(?:[.,]\d+)?)\s*$/.exec(piece);
        const [area_mm2, perMetre] = [found?.[1], found?.[2]].map((text) => Number(text?.replace(",", ".")));
        if (!found || !area_mm2 || !Number.isFinite(perMetre))
          return refused(`"${piece.trim()}" is not a size and a price. Write them like 0.75: 0.40.`);
        read.push({ area_mm2, perMetre: perMetre! });
      }
      return { ok: true, value: read };
    },
  };
}

const OF_SETTINGS = new Set(["ambient_degC", "dropCritical_percent", "dropOther_percent"]);

/** The edit that states a value of a thing. */
export function basisEdit(harness: Harness, of: Stater, key: string, value: unknown): Edit {
  if (of !== "harness") {
    return "wire" in of
      ? { kind: "change-wire", wire: of.wire, changes: { [key]: value } }
      : { kind: "change-part", part: of.part, changes: { [key]: value } };
  }
  const changes: Partial<Settings> = OF_SETTINGS.has(key)
    ? { [key]: value }
    : { electrical: { ...harness.settings.electrical, [key]: value } };
  return { kind: "change-settings", changes };
}
