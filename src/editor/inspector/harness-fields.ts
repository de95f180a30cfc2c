import { refused } from "../../graph/edits/edit.ts";
import type { Harness, Run, TitleBlock } from "../../graph/harness.ts";
import { choiceField, designationField, type Field, figureField, lineField, noteField } from "./fields.ts";
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
    choiceField("zone", "Where", run.zone, [
      "unknown",
      "cabin",
      "engine-bay",
      "outside",
      "door",
      "luggage-space",
    ]),
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
    noteField(run.note),
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
