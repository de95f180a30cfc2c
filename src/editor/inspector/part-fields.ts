import type { Harness, Part } from "../../graph/harness.ts";
import {
  choiceField,
  designationField,
  type Field,
  figureField,
  flagField,
  functionField,
  lineField,
  noteField,
  optionalField,
} from "./fields.ts";

/** The fields of a part, in the order in which they are shown. Cavities, view and switches have editors of their own. */
export function partFields(harness: Harness, part: Part): readonly Field[] {
  const taken = new Set(Object.values(harness.parts).map((other) => other.designation));
  return [
    designationField(part.designation, taken),
    lineField("name", "Name", part.name),
    ...ownFields(part),
    noteField(part.note),
  ];
}

function ownFields(part: Part): readonly Field[] {
  switch (part.kind) {
    case "connector":
      return [
        choiceField("form", "Form", part.form, ["housing", "line-plug", "flying-leads", "terminal-strip"]),
        choiceField("gender", "Gender", part.gender, ["plug", "receptacle", "unknown"]),
        optionalField("shell", "Shell", part.shell, "shape of the housing"),
        optionalField("keying", "Keying", part.keying, "colour or key that tells it apart"),
        ...(part.form === "line-plug"
          ? [
              choiceField("cover", "Covered when unused", part.cover, ["none", "contact-only", "whole"], {
                "contact-only": "only the contact",
              }),
            ]
          : []),
      ];
    case "splice":
      return [
        choiceField("method", "Made by", part.method, [
          "solder-and-sleeve",
          "crimped-butt",
          "bullet-pair",
          "tap",
          "terminal-block",
          "twisted",
          "twist-on-nut",
          "unknown",
        ]),
        choiceField("cover", "Covered by", part.cover, [
          "adhesive-sleeve",
          "sleeve",
          "tape",
          "housing",
          "none",
          "unknown",
        ]),
      ];
    case "cap":
      return [
        choiceField("method", "Made safe by", part.method, [
          "end-cap",
          "sleeve-folded-back",
          "crimp-cap",
          "tape",
          "unknown",
        ]),
      ];
    case "ground":
      return [
        lineField("where", "Where", part.where, "which stud or bolt"),
        choiceField("surface", "Surface", part.surface, ["bare-metal", "painted", "trim", "unknown"]),
      ];
    case "supply":
      return [
        figureField("voltage_V", "Voltage", part.voltage_V, "V", { most: 60, required: true }),
        figureField("capacity_Ah", "Capacity", part.capacity_Ah, "Ah", { most: 10_000 }),
        figureField("resistance_ohm", "Inner resistance", part.resistance_ohm, "Ω", { most: 1000 }),
      ];
    case "fuse":
      return [
        figureField("rating_A", "Rating", part.rating_A, "A", { most: 1000 }),
        choiceField("form", "Form", part.form, [
          "mini",
          "regular",
          "maxi",
          "glass",
          "bolt-down",
          "breaker",
          "unknown",
        ]),
      ];
    case "relay":
      return [
        choiceField("poles", "Contacts", part.poles, ["make", "changeover", "double-make"], {
          make: "make: 30, 87",
          changeover: "changeover: 30, 87, 87a",
          "double-make": "double make: 30, 87, 87b",
        }),
        choiceField("suppression", "Across the coil", part.suppression, [
          "none",
          "diode",
          "resistor",
          "unknown",
        ]),
        figureField("coil_ohm", "Coil", part.coil_ohm, "Ω", { most: 10_000 }),
        figureField("rating_A", "Rating", part.rating_A, "A", { most: 1000 }),
      ];
    case "switch":
      return [
        choiceField("operatedBy", "Worked by", part.operatedBy, [
          "hand",
          "key",
          "parking-brake",
          "reverse-gear",
          "brake-pedal",
          "lights",
          "door",
          "other",
        ]),
        figureField("rating_A", "Rating", part.rating_A, "A", { most: 1000 }),
      ];
    case "diode":
      return [figureField("rating_A", "Rating", part.rating_A, "A", { most: 1000 })];
    case "resistor":
      return [
        figureField("resistance_ohm", "Resistance", part.resistance_ohm, "Ω"),
        figureField("power_W", "Power", part.power_W, "W", { most: 10_000 }),
      ];
    case "capacitor":
      return [figureField("capacitance_uF", "Capacitance", part.capacitance_uF, "µF", { most: 1e7 })];
    case "load":
      return [
        choiceField("type", "What it is", part.type, [
          "lamp",
          "camera",
          "motor",
          "heater",
          "sounder",
          "antenna",
          "other",
        ]),
        functionField("function", "Works on", part.function),
        figureField("current_A", "Draws", part.current_A, "A", { most: 10_000 }),
        choiceField("behaviour", "Draws it as", part.behaviour, [
          "resistance",
          "constant-current",
          "constant-power",
          "filament",
          "unknown",
        ]),
        figureField("standby_A", "Draws asleep", part.standby_A, "A", { most: 10_000 }),
        flagField("polarised", "Plus and minus must not be exchanged", part.polarised),
      ];
    case "speaker":
      return [
        choiceField("position", "Place", part.position, [
          "front-left",
          "front-right",
          "rear-left",
          "rear-right",
          "centre",
          "subwoofer",
          "other",
        ]),
        choiceField("type", "Type", part.type, ["full-range", "woofer", "tweeter", "other"]),
        figureField("impedance_ohm", "Impedance", part.impedance_ohm, "Ω", { most: 1000 }),
        figureField("power_W", "Power", part.power_W, "W", { most: 100_000 }),
      ];
    case "module":
      return [
        choiceField("role", "What it is", part.role, [
          "receiver",
          "amplifier",
          "interface",
          "camera",
          "display",
          "antenna",
          "trailer",
          "charger",
          "other",
        ]),
        choiceField("side", "Belongs to", part.side, ["vehicle", "equipment"], {
          vehicle: "the vehicle",
          equipment: "the new equipment",
        }),
        choiceField("outputs", "Speaker outputs", part.outputs, [
          "bridged",
          "common-negative",
          "none",
          "unknown",
        ]),
        choiceField("wakes", "Wakes", part.wakes, ["by-lead", "by-signal", "unknown"]),
        figureField("leastLoad_ohm", "Least load of a channel", part.leastLoad_ohm, "Ω", { most: 1000 }),
        figureField("channelPower_W", "Power of a channel", part.channelPower_W, "W", { most: 100_000 }),
        figureField("standby_A", "Draws asleep", part.standby_A, "A", { most: 10_000 }),
        flagField("feedsCrossed", "Constant and switched feed are exchanged on purpose", part.feedsCrossed),
      ];
  }
}

/** The edit's changes of a connector that now belongs elsewhere. */
export function belongsFields(
  harness: Harness,
  part: Extract<Part, { kind: "connector" }>,
): readonly Field[] {
  const modules = Object.values(harness.parts).filter((other) => other.kind === "module");
  const mates = Object.values(harness.parts).filter(
    (other) => other.kind === "connector" && other.id !== part.id,
  );
  const { side, module } = part.belongsTo;
  return [
    {
      ...choiceField("belongsTo", "Belongs to", side, ["vehicle", "equipment"], {
        vehicle: "the vehicle",
        equipment: "the new equipment",
      }),
      read: (typed) => ({
        ok: true,
        value: { ...part.belongsTo, side: typed === "vehicle" ? "vehicle" : "equipment" },
      }),
    },
    ...(modules.length
      ? [
          {
            ...choiceField("belongsTo", "Receptacle of", module ?? "", ["", ...modules.map((one) => one.id)]),
            choices: [
              ["", "no module"] as const,
              ...modules.map((one) => [one.id, `${one.designation} ${one.name}`.trim()] as const),
            ],
            read: (typed: string) => ({
              ok: true as const,
              value: { ...part.belongsTo, module: typed === "" ? null : typed },
            }),
          },
        ]
      : []),
    ...(mates.length
      ? [
          {
            ...choiceField("matedWith", "Plugged into", part.matedWith ?? "", [""]),
            choices: [
              ["", "nothing here"] as const,
              ...mates.map((one) => [one.id, `${one.designation} ${one.name}`.trim()] as const),
            ],
            read: (typed: string) => ({ ok: true as const, value: typed === "" ? null : typed }),
          },
        ]
      : []),
  ];
}
