import type { Connector, Harness, Module } from "../../graph/harness.ts";
import type { PathCommand, Primitive } from "../../layout/drawing.ts";
import {
  BODY_TEXT,
  belongsWords,
  FACE_ROOM,
  HEAD_TEXT,
  SMALL_TEXT,
  viewWords,
  WORD_GAP,
} from "../../layout/geometry/caption.ts";
import { HEAD } from "../../layout/geometry/shape.ts";
import { textWidth } from "../../layout/text/measure.ts";
import { HAIR, inkStroke, path, run, words } from "./pen.ts";

const PAD = 8;
const OUTPUT_WORDS = {
  bridged: "bridged outputs",
  "common-negative": "outputs with common negative",
  none: "",
  unknown: "",
} as const;

/** The head of a housing: designation, what it belongs to, its name, the side it is seen from. */
export function drawHead(part: Connector | Module, width: number, harness: Harness): readonly Primitive[] {
  const room = width - 2 * PAD;
  const face = part.kind === "connector" ? drawFace(part, width - PAD) : [];
  const topRoom = room - (face.length > 0 ? FACE_ROOM + WORD_GAP : 0);
  const after = PAD + textWidth(part.designation, HEAD_TEXT, "bold") + WORD_GAP;
  return [
    ...words(PAD, 21, part.designation, { size: HEAD_TEXT, weight: "bold", room: topRoom }),
    ...words(after, 21, besideDesignation(part, harness), {
      size: SMALL_TEXT,
      colour: "quiet",
      room: topRoom - after + PAD,
    }),
    ...face,
    ...words(PAD, 36, part.name, { size: BODY_TEXT, room }),
    ...words(PAD, HEAD - 6, thirdLine(part, harness), { size: SMALL_TEXT, room }),
  ];
}

function besideDesignation(part: Connector | Module, harness: Harness): string {
  if (part.kind === "module") return part.role === "other" ? "module" : part.role;
  const { module } = part.belongsTo;
  return belongsWords(part, module && (harness.parts[module]?.designation ?? null));
}

function thirdLine(part: Connector | Module, harness: Harness): string {
  if (part.kind === "module") return [part.side, OUTPUT_WORDS[part.outputs]].filter(Boolean).join(" · ");
  const mate = part.matedWith && harness.parts[part.matedWith]?.designation;
  return mate ? `${viewWords(part.view)} · mated with ${mate}` : viewWords(part.view);
}

/** The face in small, from the stated side: one square a cavity, the first one solid. */
function drawFace(part: Connector, right: number): readonly Primitive[] {
  const columns = Math.max(0, ...part.rows.map((row) => row.length));
  if (columns === 0) return [];
  const pitch = Math.min(6, (FACE_ROOM - 4) / columns, 18 / part.rows.length);
  const [width, height] = [columns * pitch, part.rows.length * pitch];
  const [left, top] = [right - width - 2, 6];
  const squares: PathCommand[] = [];
  const first: PathCommand[] = [];
  const size = pitch * 0.7;
  for (const [rowIndex, row] of part.rows.entries()) {
    for (const [column, contact] of row.entries()) {
      if (contact === 0) continue;
      const x = left + column * pitch + (pitch - size) / 2;
      const y = top + rowIndex * pitch + (pitch - size) / 2;
      const square = run([x, y, x + size, y, x + size, y + size, x, y + size], true);
      (contact === 1 ? first : squares).push(...square);
    }
  }
  const [l, t, r, b] = [left - 2, top - 2, left + width + 2, top + height + 2];
  return [
    path(run([l, t, r, t, r, b, l, b], true), { fill: "paper", stroke: inkStroke(HAIR) }),
    path(squares, { stroke: inkStroke(pitch > 3 ? HAIR : 0.4) }),
    path(first, { fill: "ink", stroke: inkStroke(pitch > 3 ? HAIR : 0.4) }),
  ].filter((item) => item.kind !== "path" || item.commands.length > 0);
}
