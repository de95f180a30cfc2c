import type {
  Cable,
  CableId,
  Cavity,
  Part,
  PartId,
  Path,
  Photo,
  PhotoId,
  Place,
  Run,
  RunId,
  Settings,
  TestRow,
  TestRowId,
  TitleBlock,
  Waiver,
  WaiverId,
  Wire,
  WireId,
} from "../harness.ts";

/** Sections whose entries stand alone: putting and dropping one needs no other change. */
export type LooseSection = "cables" | "runs" | "waivers" | "testRecord" | "photos";

/**
 * An edit is a value: it can be saved, sent to a worker, offered as a fix, and applied to another harness.
 * Each kind changes one thing; `group` makes several of them one step with a name a person reads.
 */
export type Edit =
  | { readonly kind: "add-part"; readonly part: Part; readonly place: Place | null }
  | {
      readonly kind: "change-part";
      readonly part: PartId;
      readonly changes: Readonly<Record<string, unknown>>;
    }
  | {
      readonly kind: "change-cavity";
      readonly part: PartId;
      readonly contact: number;
      readonly changes: Partial<Cavity>;
    }
  | { readonly kind: "remove"; readonly parts: readonly PartId[]; readonly wires: readonly WireId[] }
  | { readonly kind: "add-wire"; readonly wire: Wire }
  | {
      readonly kind: "change-wire";
      readonly wire: WireId;
      readonly changes: Partial<Omit<Wire, "id">>;
    }
  | {
      readonly kind: "put-entry";
      readonly section: LooseSection;
      readonly entry: Cable | Run | Waiver | TestRow | Photo;
    }
  | {
      readonly kind: "drop-entry";
      readonly section: LooseSection;
      readonly id: CableId | RunId | WaiverId | TestRowId | PhotoId;
    }
  | { readonly kind: "change-settings"; readonly changes: Partial<Settings> }
  | { readonly kind: "change-title-block"; readonly changes: Partial<TitleBlock> }
  | {
      readonly kind: "lay-out";
      readonly places: Readonly<Record<PartId, Place>>;
      /** `null` forgets a path: the wire is routed anew. */
      readonly paths: Readonly<Record<WireId, Path | null>>;
    }
  | { readonly kind: "group"; readonly name: string; readonly edits: readonly Edit[] };

/** A refusal is a result, because people cause it; a bug throws. */
export type Refused = { readonly ok: false; readonly why: string };

export const refused = (why: string): Refused => ({ ok: false, why });

export function group(name: string, edits: readonly Edit[]): Edit {
  return { kind: "group", name, edits };
}

/** A field as a person reads it: "area_mm2" → "area", "belongsTo" → "belongs to", 3 → "3". */
export function sayField(name: PropertyKey): string {
  if (typeof name !== "string") return String(name);
  return name.replace(/_[A-Za-z0-9]+$/, "").replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

const SECTION_WORDS: Readonly<Record<LooseSection, string>> = {
  cables: "cable",
  runs: "run",
  waivers: "waiver",
  testRecord: "test record",
  photos: "photo",
};

const fields = (changes: object) => Object.keys(changes).map(sayField).join(", ");

/** What the edit is called in "Undo: …": lower case, no full stop. */
export function nameOfEdit(edit: Edit): string {
  switch (edit.kind) {
    case "group":
      return edit.name;
    case "add-part":
      return `add ${edit.part.designation}`;
    case "change-part":
      return "designation" in edit.changes ? "rename part" : `change ${fields(edit.changes)}`;
    case "change-cavity":
      return `change cavity ${fields(edit.changes)}`;
    case "remove":
      return edit.parts.length ? "remove parts" : edit.wires.length === 1 ? "remove wire" : "remove wires";
    case "add-wire":
      return "add wire";
    case "change-wire":
      return `change wire ${fields(edit.changes)}`;
    case "put-entry":
      return edit.section === "waivers" ? "waive finding" : `change ${SECTION_WORDS[edit.section]}`;
    case "drop-entry":
      return edit.section === "waivers" ? "withdraw waiver" : `remove ${SECTION_WORDS[edit.section]}`;
    case "change-settings":
      return "change settings";
    case "change-title-block":
      return "change title block";
    case "lay-out":
      return "move";
  }
}
