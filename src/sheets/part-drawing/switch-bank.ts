import type { ConfigurationSwitch } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { SMALL_TEXT, SWITCH_CELL, SWITCHES_PER_ROW } from "../../layout/geometry/caption.ts";
import { HEAD, SWITCH_ROW } from "../../layout/geometry/shape.ts";
import { box, HAIR, HEAVY, inkStroke, line, path, run, words } from "./pen.ts";

/**
 * A module's configuration switches. On: the slider is at the top; off: at the bottom; not set: open, in the
 * middle. The word stands below. One that stands otherwise than its chart wants is framed, with an arrow to
 * where it should go.
 */
export function drawSwitchBank(
  switches: readonly ConfigurationSwitch[],
  width: number,
): readonly Primitive[] {
  return switches.flatMap((one, index) => {
    const row = Math.floor(index / SWITCHES_PER_ROW);
    const inRow = Math.min(SWITCHES_PER_ROW, switches.length - row * SWITCHES_PER_ROW);
    const left = (width - inRow * SWITCH_CELL) / 2 + (index % SWITCHES_PER_ROW) * SWITCH_CELL;
    return drawSwitch(one, left, HEAD + row * SWITCH_ROW);
  });
}

function drawSwitch(one: ConfigurationSwitch, left: number, top: number): Primitive[] {
  const middle = left + SWITCH_CELL / 2;
  const slot = differsFromWanted(one) ? middle - 8 : middle - 5;
  const [slotTop, slotHeight, knob] = [top + 14, 18, 8];
  const at = one.position === "on" ? 0 : one.position === "off" ? slotHeight - knob : (slotHeight - knob) / 2;
  const items: Primitive[] = [
    ...words(middle, top + 11, one.label, {
      size: SMALL_TEXT,
      weight: "bold",
      align: "middle",
      room: SWITCH_CELL,
    }),
    box(slot, slotTop, 10, slotHeight, { fill: "paper", stroke: inkStroke(HAIR) }),
    box(
      slot + 1,
      slotTop + at + 0.75,
      8,
      knob - 1.5,
      one.position === "unset" ? { stroke: inkStroke(HAIR, [1.5, 1.5]) } : { fill: "ink" },
    ),
    ...words(middle, top + 43, one.position === "unset" ? "–" : one.position, {
      size: SMALL_TEXT,
      align: "middle",
      room: SWITCH_CELL,
    }),
  ];
  if (differsFromWanted(one)) {
    const up = one.wanted === "on";
    const [from, to] = up ? [slotTop + 15, slotTop + 3] : [slotTop + 3, slotTop + 15];
    const x = left + SWITCH_CELL - 6;
    const barb = up ? 4 : -4;
    items.push(
      box(left + 0.75, top + 1, SWITCH_CELL - 1.5, SWITCH_ROW - 3, { radius: 2, stroke: inkStroke(HEAVY) }),
      line(x, from, x, to, HAIR),
      path(run([x, to, x - 2.25, to + barb, x + 2.25, to + barb], true), { fill: "ink" }),
    );
  }
  return items;
}

/** True where a switch stands otherwise than the module's own chart wants it, or nobody has set it. */
export function differsFromWanted(one: ConfigurationSwitch): boolean {
  return (one.wanted === "on" || one.wanted === "off") && one.position !== one.wanted;
}
