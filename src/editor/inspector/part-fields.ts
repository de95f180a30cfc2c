import type { Harness, Part } from "../../graph/harness.ts";
import { choiceField, designationField, type Field, lineField, noteField } from "./fields.ts";
import { kindFields } from "./kind-fields.ts";

/** The fields of a part, in the order in which they are shown. Cavities, view and switches have editors of their own. */
export function partFields(harness: Harness, part: Part): readonly Field[] {
  const taken = new Set(Object.values(harness.parts).map((other) => other.designation));
  return [
    designationField(part.designation, taken),
    lineField("name", "Name", part.name),
    ...kindFields(part),
    noteField(part.note),
  ];
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
