import { refused } from "../../graph/edits/edit.ts";
import type { Harness, Run, TitleBlock } from "../../graph/harness.ts";
import {
  choiceField,
  designationField,
  type Field,
  figureField,
  lineField,
  noteField,
  ticksField,
} from "./fields.ts";
import { HAZARD_NAMES, HAZARDS } from "./hazards.ts";
import { ZONES } from "./kind-fields.ts";
import { lengthField } from "./wire-fields.ts";

/** Names of the title block's lines (ISO 7200 and the vehicle's own). */
const TITLES: readonly (readonly [Exclude<keyof TitleBlock, "status">, string])[] = [
  ["title", "Title"],
  ["supplementaryTitle", "Second title"],
  ["vehicle", "Vehicle"],
  ["owner", "Owner"],
  ["documentNumber", "Document number"],
  ["revision", "Revision"],
  ["dateOfIssue", "Date of issue"],
  ["creator", "Drawn by"],
  ["approver", "Approved by"],
  ["documentType", "Kind of document"],
  ["language", "Language"],
];

export function titleFields({ titleBlock }: Harness): readonly Field[] {
  return [
    ...TITLES.map(([key, name]) => lineField(key, name, titleBlock[key])),
    choiceField("status", "Status", titleBlock.status, ["draft", "under-test", "released"]),
  ];
}

export function settingFields({ settings }: Harness): readonly Field[] {
  return [
    {
      ...choiceField("systemVoltage_V", "Voltage", String(settings.systemVoltage_V), ["6", "12", "24"], {
        "6": "6 V",
        "12": "12 V",
        "24": "24 V",
      }),
      read: (typed) => ({ ok: true, value: Number(typed) }),
    },
    choiceField("sizes", "Wire sizes", settings.sizes, ["metric", "awg"], { metric: "mm²", awg: "AWG" }),
    figureField("ambient_degC", "Ambient", settings.ambient_degC, "°C", {
      least: -60,
      most: 150,
      required: true,
    }),
    figureField("dropCritical_percent", "Voltage drop, critical", settings.dropCritical_percent, "%", {
      least: 0.1,
      most: 100,
      required: true,
    }),
    figureField("dropOther_percent", "Voltage drop, other", settings.dropOther_percent, "%", {
      least: 0.1,
      most: 100,
      required: true,
    }),
  ];
}

export function sheetFields({ settings: { sheet } }: Harness): readonly Field[] {
  return [
    choiceField("size", "Paper", sheet.size, ["A4", "A3", "Letter", "Tabloid"]),
    choiceField("orientation", "Lies", sheet.orientation, ["landscape", "portrait"]),
    choiceField("fit", "Diagram", sheet.fit, ["one-page", "tiles"], {
      "one-page": "on one page",
      tiles: "over several pages",
    }),
  ];
}

export function runFields(harness: Harness, run: Run): readonly Field[] {
  const taken = new Set(Object.values(harness.runs).map((other) => other.designation));
  return [
    { ...designationField(run.designation, taken), name: "Run" },
    lineField("from", "From", run.from),
    lineField("to", "To", run.to),
    lengthField(run.length_m),
    choiceField("zone", "Where", run.zone, ZONES),
    choiceField("covering", "Covering", run.covering, [
      "unknown",
      "none",
      "split-loom",
      "cloth-tape",
      "braid",
      "conduit",
      "heat-sleeve",
    ]),
    passesField(run),
    {
      ...ticksField("near", "Passes near", run.near, HAZARDS, HAZARD_NAMES),
      help: "Of what a fitter has to beware along this run. Follow the vehicle maker's instructions near airbags and high voltage.",
    },
    noteField(run.note),
    {
      ...choiceField("hinge", "At a hinge", run.hinge, ["none", "twists-along", "bends-across", "unknown"], {
        none: "crosses none",
        "twists-along": "twists along it",
        "bends-across": "bends across it",
      }),
      help: "Laid along the hinge a loom is twisted a little each time; straight across it, it is bent, and its strands break one by one.",
      more: run.zone !== "door",
    },
    {
      ...lengthField(run.support_m),
      key: "support_m",
      name: "Widest between clips",
      help: "The longest stretch without a clip or tie.",
      more: true,
    },
    {
      ...figureField("bend_mm", "Tightest bend", run.bend_mm, "mm", { most: 10_000 }),
      help: "The radius at the inner side of the bend.",
      more: true,
    },
    {
      ...choiceField("dripLoop", "Drip loop", run.dripLoop, ["yes", "no", "unknown"]),
      help: "A sag before the plug or the hole, lower than it: water drips off there and does not run in.",
      more: true,
    },
    {
      ...choiceField("drilled", "Drilled for it", run.drilled, ["no", "looked-behind", "blind", "unknown"], {
        no: "nothing",
        "looked-behind": "looked behind first",
        blind: "without looking behind",
      }),
      help: "Looms, fuel and brake pipes, tanks and airbags may lie behind a panel. Look before a hole is made.",
      more: true,
    },
  ];
}

/** What is known of the vehicle as a whole. */
export function vehicleFields({ settings: { vehicle } }: Harness): readonly Field[] {
  return [
    {
      ...choiceField("highVoltage", "High voltage", vehicle.highVoltage, ["yes", "no", "unknown"]),
      help: "A traction battery, or mains on board: anything above 60 V DC or 30 V AC. Its leads are orange. Only people trained for it work on them.",
    },
    {
      ...choiceField("lamps", "Outside lamps", vehicle.lamps, ["plain", "watched", "unknown"], {
        plain: "plainly switched",
        watched: "watched by a controller",
      }),
      help: "A controller that watches the lamps reports one that is missing or added. A trailer then needs an interface of its own.",
    },
  ];
}

const PROTECTIONS = ["none", "grommet", "gaiter", "clamp", "unknown"] as const;
type Pass = Run["passes"][number];

/** "bulkhead: grommet; door: gaiter": what the run passes through and what protects it there. */
function passesField(run: Run): Field {
  return {
    key: "passes",
    name: "Passes through",
    look: "line",
    hint: "bulkhead: grommet; door: gaiter",
    text: run.passes
      .map(({ what, protection }) => (protection === "unknown" ? what : `${what}: ${protection}`))
      .join("; "),
    read: (typed) => {
      const passes: Pass[] = [];
      for (const piece of typed.split(";")) {
        const [what = "", said = ""] = piece.split(":").map((word) => word.trim());
        if (what === "" && said === "") continue;
        const protection = said === "" ? "unknown" : PROTECTIONS.find((one) => one === said.toLowerCase());
        if (!protection) {
          return refused(`"${said}" is none of: grommet, gaiter, clamp, none.`);
        }
        passes.push({ what, protection });
      }
      return { ok: true, value: passes };
    },
  };
}
