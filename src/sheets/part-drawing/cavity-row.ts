import type { Contact } from "../../graph/contacts.ts";
import type { Direction } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { BODY_TEXT, SMALL_TEXT } from "../../layout/geometry/caption.ts";
import { LABEL_CELL, LEAD_CELL, MARK_CELL, TEXT_PAD } from "../../layout/geometry/shape.ts";
import { cavityText, wordsOfUse } from "../../layout/scene.ts";
import { textWidth } from "../../layout/text/measure.ts";
import { box, HAIR, HEAVY, inkStroke, line, MIDDLE, path, RULE, run, words } from "./pen.ts";
import { leadMark } from "./swatch.ts";

/** Where a cavity's row stands in its housing. */
export type Row = {
  readonly top: number;
  readonly bottom: number;
  /** Middles of the places where wires land, top to bottom. */
  readonly slots: readonly number[];
};

/** One cavity, wire edge first: label, lead, what gives and takes, function, use. */
export function drawRow(contact: Contact, row: Row, width: number, left: boolean): readonly Primitive[] {
  const middle = row.slots[0] ?? (row.top + row.bottom) / 2;
  const height = row.bottom - row.top;
  // Cells are counted from the wire edge; `from` turns a cell into its left edge on the page.
  const from = (offset: number, cell: number): number => (left ? offset : width - offset - cell);
  const items: Primitive[] = [box(from(0, LABEL_CELL), row.top, LABEL_CELL, height, { fill: "paper" })];
  const cavity = contact.cavity;
  const use = cavity ? wordsOfUse(cavity) : "";
  if (cavity?.use === "plugged") {
    const [l, r] = [from(0, LABEL_CELL) + 3, from(0, LABEL_CELL) + LABEL_CELL - 3];
    items.push(
      path([...run([l, row.top + 3, r, row.bottom - 3]), ...run([l, row.bottom - 3, r, row.top + 3])], {
        stroke: { colour: "quiet", width: HAIR },
      }),
    );
  }
  items.push(
    line(from(LABEL_CELL, 0), row.top, from(LABEL_CELL, 0), row.bottom, HAIR),
    ...words(from(0, LABEL_CELL) + LABEL_CELL / 2, middle + BODY_TEXT * MIDDLE, contact.label, {
      size: textWidth(contact.label, BODY_TEXT, "bold") > LABEL_CELL - 4 ? SMALL_TEXT : BODY_TEXT,
      weight: "bold",
      align: "middle",
      room: LABEL_CELL - 2,
    }),
    ...leadMark(from(LABEL_CELL, LEAD_CELL) + 5, middle, LEAD_CELL - 6, cavity?.lead ?? null),
    ...directionMark(
      from(LABEL_CELL + LEAD_CELL, MARK_CELL) + MARK_CELL / 2,
      middle,
      contact.direction,
      left,
    ),
  );
  if (row.slots.length > 1) {
    const x = left ? 2.5 : width - 2.5;
    items.push(line(x, row.slots[0]! - 4, x, row.slots.at(-1)! + 4, HEAVY * 1.5));
  }
  const before = LABEL_CELL + LEAD_CELL + MARK_CELL;
  const tag = use === "" ? 0 : textWidth(use, SMALL_TEXT, "regular") + 8;
  if (use !== "") {
    const x = from(width - tag - 4, tag);
    items.push(
      box(x, middle - 7.5, tag, 15, {
        radius: 2,
        stroke: inkStroke(HAIR, use === "optional" ? [2, 2] : undefined),
      }),
      ...words(x + tag / 2, middle + SMALL_TEXT * MIDDLE, use, {
        size: SMALL_TEXT,
        align: "middle",
        room: tag,
      }),
    );
  }
  const room = width - before - (tag === 0 ? TEXT_PAD - 2 : tag + 8);
  items.push(
    ...words(left ? before : width - before, middle + BODY_TEXT * MIDDLE, cavity ? cavityText(cavity) : "", {
      size: BODY_TEXT,
      align: left ? "start" : "end",
      room,
    }),
  );
  return items;
}

/**
 * Gives: a solid triangle towards the wire. Takes: an open triangle away from it. Both: two open ones back to
 * back. Told apart by shape alone.
 */
export function directionMark(
  x: number,
  y: number,
  direction: Direction,
  left: boolean,
): readonly Primitive[] {
  const out = left ? -1 : 1;
  const triangle = (tip: number, base: number) => run([x + tip, y, x + base, y - 4, x + base, y + 4], true);
  switch (direction) {
    case "gives":
      return [path(triangle(out * 4, -out * 4), { fill: "ink", stroke: inkStroke(HAIR) })];
    case "takes":
      return [path(triangle(-out * 4, out * 4), { fill: "paper", stroke: inkStroke(RULE) })];
    case "both":
      return [
        path([...triangle(-5.5, -0.75), ...triangle(5.5, 0.75)], { fill: "paper", stroke: inkStroke(RULE) }),
      ];
    case "none":
    case "unknown":
      return [];
  }
}
