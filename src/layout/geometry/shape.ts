import { contactsOf } from "../../graph/contacts.ts";
import type { Part } from "../../graph/harness.ts";
import { SWITCH_CELL, SWITCHES_PER_ROW } from "./caption.ts";

export type PortSide = "left" | "right" | "top" | "bottom";

/** Where a wire meets a part, relative to the part's top left corner. */
export type Port = {
  readonly contact: number;
  /** Several wires on one contact each get a place of their own, from 0, top to bottom. */
  readonly slot: number;
  readonly x: number;
  readonly y: number;
  readonly side: PortSide;
};

/** The outline of a part in drawing units: the one source of sizes for screen, paper, arranging and routing. */
export type Shape = {
  readonly width: number;
  readonly height: number;
  readonly ports: readonly Port[];
};

/** All sizes are multiples of this, so that contacts of different parts can line up. */
export const GRID = 8;
/** Height of one cavity row, and the distance between wires that leave a housing. */
export const ROW = 24;
/** Height of a housing's head: designation, name, and the view it is seen from. */
export const HEAD = 60;
/** Below the last row: with the head, it puts every cavity row on the grid and the outline too. */
const FOOT = 12;
/** Height of one row of a module's configuration switches. */
export const SWITCH_ROW = 48;
/** Width of the cell that holds a cavity's label, at the edge the wires leave from. */
export const LABEL_CELL = 40;
/** Width of the cell with the lead's colour and letters. */
export const LEAD_CELL = 64;
/** Width of the cell with the mark that says whether what stands behind the cavity gives or takes. */
export const MARK_CELL = 20;
const NARROWEST = 176;
/** Room at the far end of a cavity's text. */
export const TEXT_PAD = 8;

/** How many wires land on a contact; 1 where none does, so that every contact can be reached. */
export type WireCount = (contact: number) => number;

/** Wires leave an equipment's housing to the left and a vehicle's to the right, unless it is turned. */
export function facesLeft(part: Part, turned: boolean): boolean {
  const usual =
    part.kind === "connector"
      ? part.belongsTo.side === "equipment"
      : part.kind === "module"
        ? part.side === "equipment"
        : part.kind !== "supply";
  return usual !== turned;
}

/**
 * The outline and ports of a part.
 * @param turned mirrored left to right
 * @param wires how many wires land on each contact
 * @param innerWidth what a housing's widest cavity text, or a symbol's caption, needs, in units
 */
export function shapeOf(part: Part, turned: boolean, wires: WireCount, innerWidth = 0): Shape {
  switch (part.kind) {
    case "connector":
    case "module":
      return housing(part, turned, wires, innerWidth);
    case "splice":
      return twoSided(widened(48, innerWidth), 32, 24, turned, wires);
    case "cap":
      return oneSided(widened(40, innerWidth), 32, [24], facesLeft(part, turned), wires);
    case "ground":
      return oneSided(widened(48, innerWidth), 56, [24], facesLeft(part, turned), wires);
    case "fuse":
    case "switch":
    case "diode":
    case "resistor":
    case "capacitor":
      return twoSided(widened(72, innerWidth), 56, 32, turned, wires);
    case "supply":
    case "load":
    case "speaker":
      return oneSided(widened(80, innerWidth), 88, [32, 64], facesLeft(part, turned), wires);
    case "relay":
      return relay(widened(136, innerWidth), contactsOf(part).length, turned, wires);
  }
}

function housing(
  part: Extract<Part, { kind: "connector" | "module" }>,
  turned: boolean,
  wires: WireCount,
  innerWidth: number,
): Shape {
  const left = facesLeft(part, turned);
  const bank =
    part.kind === "module" ? SWITCH_CELL * Math.min(part.switches.length, SWITCHES_PER_ROW) + 16 : 0;
  const cells = LABEL_CELL + LEAD_CELL + MARK_CELL + TEXT_PAD;
  const width = snapUp(Math.min(360, Math.max(NARROWEST, bank, innerWidth + cells)));
  let y = HEAD + switchRows(part) * SWITCH_ROW;
  const ports: Port[] = [];
  for (const contact of contactsOf(part)) {
    const count = Math.max(1, wires(contact.number));
    for (let slot = 0; slot < count; slot++) {
      ports.push({
        contact: contact.number,
        slot,
        x: left ? 0 : width,
        y: y + ROW / 2,
        side: left ? "left" : "right",
      });
      y += ROW;
    }
  }
  return { width, height: y + FOOT, ports };
}

/** Rows of configuration switches that a module shows below its head. */
export function switchRows(part: Part): number {
  return part.kind === "module" ? Math.ceil(part.switches.length / SWITCHES_PER_ROW) : 0;
}

/** A symbol's outline grows with its caption, within reason. */
function widened(width: number, caption: number): number {
  return snapUp(Math.min(160, Math.max(width, caption)));
}

/** Contact 1 on the left, 2 on the right; the part grows downwards with the wires that land on it. */
function twoSided(width: number, height: number, first: number, turned: boolean, wires: WireCount): Shape {
  const ports: Port[] = [];
  let most = 1;
  for (const contact of [1, 2]) {
    const left = (contact === 1) !== turned;
    const count = Math.max(1, wires(contact));
    most = Math.max(most, count);
    for (let slot = 0; slot < count; slot++) {
      ports.push({
        contact,
        slot,
        x: left ? 0 : width,
        y: first + slot * ROW,
        side: left ? "left" : "right",
      });
    }
  }
  return { width, height: height + (most - 1) * ROW, ports };
}

function oneSided(
  width: number,
  height: number,
  rows: readonly number[],
  left: boolean,
  wires: WireCount,
): Shape {
  const ports: Port[] = [];
  let extra = 0;
  for (const [index, row] of rows.entries()) {
    const count = Math.max(1, wires(index + 1));
    for (let slot = 0; slot < count; slot++) {
      if (slot > 0) extra += ROW;
      ports.push({
        contact: index + 1,
        slot,
        x: left ? 0 : width,
        y: row + extra,
        side: left ? "left" : "right",
      });
    }
  }
  return { width, height: height + extra, ports };
}

/** Coil 86, 85 and common 30 on the left; the contacts it makes or breaks on the right. */
function relay(width: number, contactCount: number, turned: boolean, wires: WireCount): Shape {
  const ports: Port[] = [];
  const place = (contacts: readonly number[], onLeft: boolean): number => {
    let y = 40;
    for (const contact of contacts) {
      const count = Math.max(1, wires(contact));
      for (let slot = 0; slot < count; slot++) {
        const left = onLeft !== turned;
        ports.push({ contact, slot, x: left ? 0 : width, y, side: left ? "left" : "right" });
        y += ROW;
      }
    }
    return y;
  };
  // Contact order is 30, 85, 86, 87, then 87a or 87b.
  const leftEnd = place([1, 3, 2], true);
  const rightEnd = place(contactCount > 4 ? [4, 5] : [4], false);
  return { width, height: Math.max(leftEnd, rightEnd) + GRID, ports };
}

export function snapUp(value: number): number {
  return Math.ceil(value / GRID) * GRID;
}

export function snap(value: number): number {
  return Math.round(value / GRID) * GRID;
}
