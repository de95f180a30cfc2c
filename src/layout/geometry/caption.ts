import type { Connector, Module, Part } from "../../graph/harness.ts";
import { textWidth } from "../text/measure.ts";

/** Sizes of the words on a part, drawing units. Nothing on a drawing is smaller than `SMALL_TEXT`. */
export const SMALL_TEXT = 11.5;
export const BODY_TEXT = 13;
export const HEAD_TEXT = 20;
/** Between a designation and what is written after it. */
export const WORD_GAP = 6;
/** Room kept at the right of a housing's head for the picture of its face. */
export const FACE_ROOM = 56;
/** Configuration switches stand side by side in cells of this width, this many to a row. */
export const SWITCH_CELL = 24;
export const SWITCHES_PER_ROW = 8;

/** What is written beside a symbol: its designation, its value on the same line, its name below. */
export type Caption = { readonly title: string; readonly value: string; readonly name: string };

const written = (value: number | "unknown", unit: string): string =>
  value === "unknown" ? "" : `${Number(value.toPrecision(4))} ${unit}`;

const POSITION_WORDS = {
  "front-left": "front left",
  "front-right": "front right",
  "rear-left": "rear left",
  "rear-right": "rear right",
  centre: "centre",
  subwoofer: "subwoofer",
  other: "",
} as const;

const OPERATED_WORDS = {
  hand: "",
  key: "key",
  "parking-brake": "parking brake",
  "reverse-gear": "reverse gear",
  "brake-pedal": "brake pedal",
  lights: "lights",
  door: "door",
  isolator: "isolator",
  other: "",
} as const;

/** The caption of a part. A rating that nobody has stated is "? A" on a fuse, where it matters, and absent elsewhere. */
export function captionOf(part: Part): Caption {
  const say = (value: string): Caption => ({ title: part.designation, value, name: part.name });
  switch (part.kind) {
    case "connector":
    case "module":
    case "splice":
    case "cap":
      return say("");
    case "ground":
      return { ...say(""), name: part.where || part.name };
    case "fuse":
      return say(written(part.rating_A, "A") || "? A");
    case "relay":
    case "diode":
      return say(written(part.rating_A, "A"));
    case "switch":
      return say(OPERATED_WORDS[part.operatedBy]);
    case "resistor":
      return say(join(written(part.resistance_ohm, "Ω"), written(part.power_W, "W")));
    case "capacitor":
      return say(written(part.capacitance_uF, "µF"));
    case "supply":
      return say(join(written(part.voltage_V, "V"), written(part.capacity_Ah, "Ah")));
    case "load":
      return say(join(part.type === "other" ? "" : part.type, written(part.current_A, "A")));
    case "speaker":
      return say(join(POSITION_WORDS[part.position], written(part.impedance_ohm, "Ω")));
  }
}

const join = (...words: readonly string[]): string => words.filter((word) => word !== "").join(" ");

/** The width that the caption asks of a small part's outline. */
export function captionWidth(part: Part): number {
  const { title, value, name } = captionOf(part);
  const small = part.kind === "splice" || part.kind === "cap" || part.kind === "ground";
  const head = textWidth(title, small ? SMALL_TEXT : BODY_TEXT, "bold");
  const tail = value === "" ? 0 : WORD_GAP + textWidth(value, SMALL_TEXT, "regular");
  const below = part.kind === "splice" || part.kind === "cap" ? 0 : textWidth(name, SMALL_TEXT, "regular");
  return Math.max(head + tail, below) + 4;
}

const FORM_WORDS = {
  housing: "",
  "line-plug": "line plug",
  "flying-leads": "flying leads",
  "terminal-strip": "terminal strip",
} as const;

/** "vehicle receptacle", or the box it belongs to and its gender. */
export function belongsWords(part: Connector, module: string | null): string {
  const gender = part.gender === "unknown" ? "" : part.gender;
  return join(module ?? part.belongsTo.side, FORM_WORDS[part.form] || gender);
}

/** From which side the cavities are seen, in words. */
export function viewWords(view: Connector["view"]): string {
  return view === "mating-face" ? "seen from mating face" : "seen from wire side";
}

/** The width that a housing's head asks for. */
export function headWidth(part: Connector | Module): number {
  const words = part.kind === "connector" ? belongsWords(part, part.belongsTo.module && "A00") : part.role;
  const top =
    textWidth(part.designation, HEAD_TEXT, "bold") +
    WORD_GAP +
    textWidth(words, SMALL_TEXT, "regular") +
    (part.kind === "connector" && part.rows.length > 0 ? FACE_ROOM + WORD_GAP : 0);
  const third = part.kind === "connector" ? textWidth(viewWords(part.view), SMALL_TEXT, "regular") : 0;
  return Math.max(top, third, textWidth(part.name, BODY_TEXT, "regular")) + 16;
}
