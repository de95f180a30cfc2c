import type { Part } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { BODY_TEXT, captionOf, SMALL_TEXT, WORD_GAP } from "../../layout/geometry/caption.ts";
import { textWidth } from "../../layout/text/measure.ts";
import { words } from "./pen.ts";

/** Designation and value above a symbol, the name below it, all about the middle of the outline. */
export function drawCaption(
  part: Part,
  width: number,
  height: number,
  titleSize: number = BODY_TEXT,
): readonly Primitive[] {
  const { title, value, name } = captionOf(part);
  const titleWidth = textWidth(title, titleSize, "bold");
  const valueWidth = value === "" ? 0 : WORD_GAP + textWidth(value, SMALL_TEXT, "regular");
  const start = Math.max(0, (width - titleWidth - valueWidth) / 2);
  const after = start + titleWidth + WORD_GAP;
  return [
    ...words(start, 13, title, { size: titleSize, weight: "bold", room: width - start }),
    ...words(after, 13, value, { size: SMALL_TEXT, room: width - after }),
    ...words(width / 2, height - 3.5, name, {
      size: SMALL_TEXT,
      colour: "quiet",
      align: "middle",
      room: width,
    }),
  ];
}
