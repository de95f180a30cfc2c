import type { Harness } from "../graph/harness.ts";
import type { Primitive } from "../layout/drawing.ts";
import { bottom, type Rect, right, units } from "./paper-size.ts";
import { box, HAIR, inkStroke, line, RULE, words } from "./part-drawing/pen.ts";
import { wrapText } from "./wrap.ts";

/** What a sheet's title block says besides what the harness says. */
export type SheetIdentity = {
  /** What this sheet shows: "Wire table". */
  readonly content: string;
  readonly sheet: number;
  readonly sheets: number;
  /** "78 %", or "" where nothing is drawn to any scale. */
  readonly scale: string;
  readonly paper: string;
  /** Stands where the harness has no date of issue. */
  readonly printed: string;
};

const STATUS_WORDS = { draft: "draft", "under-test": "under test", released: "released" } as const;
const LABEL = 9;
const VALUE = 12;
const PAD = 5;

type Field = {
  readonly label: string;
  readonly value: string;
  /** From the block's left edge and top edge, mm. */
  readonly at: readonly [number, number];
  readonly size: readonly [number, number];
  readonly strong?: boolean;
};

/** The fields of a title block, by the names of ISO 7200 (from memory), with the vehicle's own lines besides. */
export function titleFields(harness: Harness, sheet: SheetIdentity): readonly Field[] {
  const { titleBlock: title, settings } = harness;
  const volts = `${settings.systemVoltage_V} V, negative ground`;
  return [
    { label: "Owner", value: title.owner, at: [0, 0], size: [60, 8] },
    { label: "Vehicle", value: title.vehicle, at: [0, 8], size: [60, 8] },
    { label: "Created by", value: title.creator, at: [0, 16], size: [30, 8] },
    { label: "Approved by", value: title.approver, at: [30, 16], size: [30, 8] },
    { label: "System", value: volts, at: [0, 24], size: [38, 8] },
    { label: "Scale", value: sheet.scale || "none", at: [38, 24], size: [22, 8] },
    { label: "Document type", value: title.documentType, at: [60, 0], size: [40, 8] },
    { label: "Status", value: STATUS_WORDS[title.status], at: [100, 0], size: [30, 8] },
    { label: "This sheet", value: sheet.content, at: [60, 24], size: [70, 8] },
    { label: "Document number", value: title.documentNumber, at: [130, 0], size: [50, 8], strong: true },
    { label: "Revision", value: title.revision, at: [130, 8], size: [22, 8] },
    {
      label: "Date of issue",
      value: title.dateOfIssue || (sheet.printed && `printed ${sheet.printed}`),
      at: [152, 8],
      size: [28, 8],
    },
    { label: "Language", value: title.language, at: [130, 16], size: [22, 8] },
    { label: "Paper", value: sheet.paper, at: [152, 16], size: [28, 8] },
    {
      label: "Sheet",
      value: `${sheet.sheet} of ${sheet.sheets}`,
      at: [130, 24],
      size: [50, 8],
      strong: true,
    },
  ];
}

/** The title block in its place at the lower right of the frame. */
export function drawTitleBlock(block: Rect, harness: Harness, sheet: SheetIdentity): readonly Primitive[] {
  const items: Primitive[] = [box(block.x, block.y, block.width, block.height, { fill: "paper" })];
  for (const field of titleFields(harness, sheet)) {
    const [x, y] = [block.x + units(field.at[0]), block.y + units(field.at[1])];
    const [width, height] = [units(field.size[0]), units(field.size[1])];
    items.push(
      box(x, y, width, height, { stroke: inkStroke(HAIR) }),
      ...words(x + PAD, y + 11, field.label, { size: LABEL, colour: "quiet", room: width - 2 * PAD }),
      ...words(x + PAD, y + 26, field.value, {
        size: VALUE,
        weight: field.strong ? "bold" : "regular",
        room: width - 2 * PAD,
      }),
    );
  }
  items.push(...drawTitle(block, harness));
  items.push(
    box(block.x, block.y, block.width, block.height, { stroke: inkStroke(RULE * 1.6) }),
    line(block.x, bottom(block), right(block), bottom(block), RULE),
  );
  return items;
}

/** The title large, in two lines where one is too short, and what the vehicle or the job adds to it. */
function drawTitle(block: Rect, harness: Harness): Primitive[] {
  const { title, supplementaryTitle } = harness.titleBlock;
  const [x, y] = [block.x + units(60), block.y + units(8)];
  const [width, height] = [units(70), units(16)];
  const room = width - 2 * PAD;
  const items: Primitive[] = [
    box(x, y, width, height, { stroke: inkStroke(HAIR) }),
    ...words(x + PAD, y + 11, "Title", { size: LABEL, colour: "quiet", room }),
  ];
  const said = title || "Untitled";
  const [first = "", ...rest] = wrapText(said, 16, "bold", room);
  if (rest.length === 0) {
    items.push(...words(x + PAD, y + 30, first, { size: 16, weight: "bold", room }));
  } else {
    const [upper = "", ...lower] = wrapText(said, 13, "bold", room);
    items.push(
      ...words(x + PAD, y + 25, upper, { size: 13, weight: "bold", room }),
      ...words(x + PAD, y + 40, lower.join(" "), { size: 13, weight: "bold", room }),
    );
  }
  items.push(...words(x + PAD, y + 55, supplementaryTitle, { size: 11, room }));
  return items;
}
