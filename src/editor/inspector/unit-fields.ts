import type { Load, Module, Speaker } from "../../graph/harness.ts";
import {
  choiceField,
  type Field,
  figureField,
  flagField,
  functionField,
  ticksField,
  voltsField,
} from "./fields.ts";
import { HAZARD_NAMES, HAZARDS } from "./hazards.ts";

const BOXES_WITH_PICTURE: ReadonlySet<Module["role"]> = new Set([
  "receiver",
  "interface",
  "camera",
  "display",
  "other",
]);

export function loadFields(part: Load): readonly Field[] {
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
    ...(part.type === "camera" || part.video !== "unknown" ? [pictureField(part.video)] : []),
    { ...worksAt(part.voltage_V), more: true },
  ];
}

export function speakerFields(part: Speaker): readonly Field[] {
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
}

export function moduleFields(part: Module): readonly Field[] {
  const picture = part.role === "camera" || part.role === "display";
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
    ...(BOXES_WITH_PICTURE.has(part.role) || part.video !== "unknown"
      ? [{ ...pictureField(part.video), more: !picture }]
      : []),
    {
      ...choiceField("sleeps", "Sleeps by itself", part.sleeps, ["yes", "no", "unknown"]),
      help: "Whether it goes to sleep when the vehicle's data bus falls quiet. One that does not keeps drawing from a constant feed.",
      more: true,
    },
    { ...worksAt(part.voltage_V), more: true },
    {
      ...choiceField("signalGround", "Signal ground", part.signalGround, ["joined", "isolated", "unknown"], {
        joined: "joined to supply ground inside",
        isolated: "kept apart inside",
      }),
      help: "Whether the shields of its sound leads and its supply ground are one inside the box. Measure with the box unplugged: near 0 Ω, they are joined.",
      more: true,
    },
    {
      ...ticksField("near", "Stands near", part.near, HAZARDS, HAZARD_NAMES),
      help: "Of what a fitter has to beware where the box is fixed. Follow the vehicle maker's instructions near airbags and high voltage.",
      more: true,
    },
  ];
}

function worksAt(voltage_V: Load["voltage_V"]): Field {
  return {
    ...voltsField("voltage_V", "Works at", voltage_V),
    help: "The supply volts between which it works unharmed, as its label or its book states them.",
  };
}

function pictureField(video: Load["video"]): Field {
  return {
    ...choiceField(
      "video",
      "Picture",
      video,
      ["ntsc", "pal", "high-definition", "several", "none", "unknown"],
      { ntsc: "NTSC", pal: "PAL", "high-definition": "high definition, analogue", several: "several kinds" },
    ),
    help: "The kind of picture it gives or shows. Camera and screen must agree, else the screen rolls, lacks colour or stays black.",
  };
}
