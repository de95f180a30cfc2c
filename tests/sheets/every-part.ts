import type { Part, PartId, PartKind } from "../../src/graph/harness.ts";
import { faceRows, makeCavity, makePart } from "../../src/graph/make.ts";

const id = (text: string): PartId => `p:${text}` as PartId;

/** Parts of every kind and of every shape within a kind. */
export function everyPart(): readonly Part[] {
  const parts: Part[] = [];
  const add = <K extends PartKind>(kind: K, known: Parameters<typeof makePart<K>>[3] = {}): void => {
    const number = parts.length + 1;
    parts.push(
      makePart(kind, id(String(number)), `Q${number}`, { name: `part ${number}`, ...known }) as Part,
    );
  };
  const cavities = [
    makeCavity("A1", {
      function: "constant-feed",
      direction: "gives",
      lead: { colour: { base: "RD", tracer: "YE" }, area_mm2: 1.5 },
    }),
    makeCavity("A2", { function: "ground", direction: "takes", lead: { colour: null, area_mm2: "unknown" } }),
    makeCavity("A3", { text: "reserved by the maker", direction: "both", use: "spare" }),
    makeCavity("A4", { function: "not-used", use: "plugged" }),
    makeCavity("long label", { function: "line-front-right-shield", use: "optional", direction: "gives" }),
  ];
  for (const form of ["housing", "line-plug", "flying-leads", "terminal-strip"] as const) {
    for (const view of ["mating-face", "wire-side"] as const) {
      add("connector", { form, view, cavities, rows: faceRows(5, 2), gender: "receptacle" });
    }
  }
  add("connector", { rows: Array.from({ length: 3 }, () => [1, 0, 2]), cavities: [] });
  add("module", { cavities, role: "amplifier", outputs: "bridged" });
  const switches = (["on", "off", "unset"] as const).flatMap((position) =>
    (["on", "off", "either", "unknown"] as const).map((wanted) => ({
      label: `${position}${wanted}`,
      position,
      wanted,
      meaning: "",
    })),
  );
  add("module", { switches });
  for (const method of [
    "solder-and-sleeve",
    "crimped-butt",
    "bullet-pair",
    "tap",
    "terminal-block",
    "twisted",
    "twist-on-nut",
    "unknown",
  ] as const) {
    add("splice", { method });
  }
  for (const method of ["end-cap", "sleeve-folded-back", "crimp-cap", "tape", "unknown"] as const) {
    add("cap", { method });
  }
  add("ground", { where: "stud under the driver's sill, left of the step" });
  add("supply", { capacity_Ah: 95 });
  add("fuse", { rating_A: 7.5 });
  add("fuse", { form: "breaker" });
  for (const poles of ["make", "changeover", "double-make"] as const) {
    for (const suppression of ["none", "diode", "resistor", "unknown"] as const)
      add("relay", { poles, suppression });
  }
  add("switch", { operatedBy: "hand" });
  add("switch", { operatedBy: "parking-brake" });
  add("diode", { rating_A: 3 });
  add("resistor", { resistance_ohm: 4700, power_W: 0.25 });
  add("capacitor", { capacitance_uF: 2200 });
  for (const type of ["lamp", "camera", "motor", "heater", "sounder", "antenna", "other"] as const) {
    add("load", { type, current_A: 1.75, polarised: type === "lamp" });
  }
  add("speaker", { position: "front-left", impedance_ohm: 4 });
  return parts;
}
