import type { Ground, Part, Splice, Switch } from "../../graph/harness.ts";
import { choiceField, type Field, figureField, lineField, optionalField } from "./fields.ts";
import { loadFields, moduleFields, speakerFields } from "./unit-fields.ts";

export const SURFACES: readonly Ground["surface"][] = [
  "bare-metal",
  "painted",
  "trim",
  "moving-part",
  "seat-belt-bolt",
  "unknown",
];

export const SURFACE_NAMES = {
  trim: "trim or a plastic-bedded panel",
  "moving-part": "a door, lid or hinge",
  "seat-belt-bolt": "bolt of a seat or seat belt",
} as const;

/** Where something lies in a vehicle. */
export const ZONES = ["unknown", "cabin", "engine-bay", "outside", "door", "luggage-space"] as const;

const OPERATED: readonly Switch["operatedBy"][] = [
  "hand",
  "key",
  "parking-brake",
  "reverse-gear",
  "brake-pedal",
  "lights",
  "door",
  "isolator",
  "other",
];

/** What is stated of a part of its kind, in the order in which it is shown. */
export function kindFields(part: Part): readonly Field[] {
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
      return spliceFields(part);
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
        choiceField("surface", "Surface", part.surface, SURFACES, SURFACE_NAMES),
        {
          ...choiceField(
            "serves",
            "Whose point",
            part.serves,
            ["this-job", "vehicle", "safety-system", "battery-post", "unknown"],
            {
              "this-job": "this job's own",
              vehicle: "one the vehicle has",
              "safety-system": "one of a safety system",
              "battery-post": "the battery's minus post",
            },
          ),
          help: "Airbags, brakes and steering have ground points of their own, which nothing else may share. The body book shows which they are.",
        },
      ];
    case "supply":
      return [
        figureField("voltage_V", "Voltage", part.voltage_V, "V", { most: 60, required: true }),
        figureField("capacity_Ah", "Capacity", part.capacity_Ah, "Ah", { most: 10_000 }),
        figureField("resistance_ohm", "Inner resistance", part.resistance_ohm, "Ω", { most: 1000 }),
        {
          ...choiceField("cover", "Over its live post", part.cover, ["boot", "none", "unknown"], {
            boot: "a boot or lid",
            none: "nothing",
          }),
          help: "What keeps a dropped spanner off the plus post and its stud.",
          more: true,
        },
        {
          ...choiceField("sensor", "Battery sensor", part.sensor, ["on-minus", "none", "unknown"], {
            "on-minus": "on the minus post",
          }),
          help: "A small box on the minus clamp by which the vehicle counts the battery's current. What is grounded on the battery's side of it is not counted.",
          more: true,
        },
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
        {
          ...choiceField("holder", "Sits in", part.holder, ["own", "fuse-box", "tap", "unknown"], {
            own: "a holder of its own",
            "fuse-box": "the vehicle's fuse box",
            tap: "a fuse tap in the fuse box",
          }),
          help: "A fuse tap stands in a place of the fuse box and takes two fuses: the old one and that of the new lead.",
        },
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
        {
          ...choiceField("operatedBy", "Worked by", part.operatedBy, OPERATED, {
            isolator: "isolator (battery switch)",
          }),
          help: "An isolator parts the whole harness from the battery for work and for laying up; it is closed at all other times.",
        },
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
      return loadFields(part);
    case "speaker":
      return speakerFields(part);
    case "module":
      return moduleFields(part);
  }
}

/** What only one way of joining has is asked where the joint is made so, and where it is stated already. */
function spliceFields(part: Splice): readonly Field[] {
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
    ...(part.method === "crimped-butt" || part.barrel !== "unknown"
      ? [
          {
            ...choiceField("barrel", "Barrel", part.barrel, ["red", "blue", "yellow", "bare", "unknown"], {
              bare: "bare, no colour",
            }),
            help: "The colour of an insulated crimp says which wire sizes it holds: red the thin ones, blue the middle, yellow the thick.",
          },
        ]
      : []),
    ...(part.method === "bullet-pair" || part.liveHalf !== "unknown"
      ? [
          {
            ...choiceField("liveHalf", "The feed's half", part.liveHalf, ["shrouded", "bare", "unknown"], {
              shrouded: "shrouded (socket)",
              bare: "bare (pin)",
            }),
            help: "Which half carries the feed when the two are pulled apart. A bare pin that stays live shorts on the first metal it touches.",
          },
        ]
      : []),
    choiceField(
      "cover",
      "Covered by",
      part.cover,
      ["adhesive-sleeve", "sleeve", "tape", "cloth-over-tape", "housing", "none", "unknown"],
      { "adhesive-sleeve": "sleeve with adhesive", "cloth-over-tape": "tape under cloth tape" },
    ),
    choiceField("zone", "Lies in", part.zone, ZONES, { unknown: "as its wires' runs say" }),
  ];
}
