import { THIN_WALL, THIN_WALL_SHEET } from "../../electrical/conductor/ampacity-vehicle.ts";
import { digits, isKnown } from "../../electrical/figure.ts";
import { ampacityFor, bookOf, conditionsFor } from "../../electrical/operate/ampacity-of.ts";
import { insulationLimit_degC } from "../../electrical/operate/resistances.ts";
import type { Harness, Wire } from "../../graph/harness.ts";

/** What of a wire decides what it bears. */
type Lead = Pick<Wire, "area_mm2" | "material" | "insulation" | "runs">;

/** What a wire bears for good, and who says so. */
export type Bears = { readonly amps: number; readonly book: string };

/** Where the insulation is not stated: the best that is usual, so that nothing is found fault with that may be sound. */
const UNSTATED_degC = 105;
const [[SHEET_BEGINS_mm2]] = THIN_WALL_SHEET as readonly [readonly [number, number]];
/** The class that the sheet's cable is named after. */
const SHEET_degC = 100;
const AIR_degC = 30;

/**
 * Amperes that a wire bears for good, by the harness's book; where that is silent, by the sheet of thin-wall vehicle
 * cable, reckoned down for cooler insulation; for wire thinner than the sheet begins, its first row in proportion to
 * the area, which is cautious: heat is shed by the surface.
 * @param loaded loaded conductors in its bundle, itself included
 * @returns `null` where no size is stated
 */
export function bears(harness: Harness, wire: Lead, loaded = 1): Bears | null {
  if (wire.area_mm2 === "unknown") return null;
  const key = `${wire.area_mm2}|${wire.material}|${wire.insulation}|${inEngineBay(harness, wire)}|${loaded}`;
  const { ampacityBook } = harness.settings.electrical;
  let kept = remembered.get(ampacityBook);
  if (!kept) {
    kept = new Map();
    remembered.set(ampacityBook, kept);
  }
  const known = kept.get(key);
  if (known) return known;
  if (kept.size > 2000) kept.clear();
  const made = reckon(harness, wire, wire.area_mm2, loaded);
  kept.set(key, made);
  return made;
}

const remembered = new Map<string, Map<string, Bears>>();

function reckon(harness: Harness, wire: Lead, area_mm2: number, loaded: number): Bears {
  const { book } = bookOf(harness.settings.electrical.ampacityBook);
  const material = wire.material === "unknown" ? "copper" : wire.material;
  const limit_degC = insulationLimit_degC(wire.insulation) ?? UNSTATED_degC;
  // A book's bundle factors hold at the voltage of vehicles, or not, whichever of the two it is.
  const conditions = conditionsFor({ limit_degC, engineSpace: inEngineBay(harness, wire) }, loaded, 12);
  const asked = { area_mm2: Math.max(area_mm2, 0.001), material };
  const own = book.ampacity(asked.area_mm2, conditions);
  const first = ampacityFor(book, asked, conditions);
  if (isKnown(own)) return { amps: own.value * first.share, book: book.name };
  const sheet = THIN_WALL.ampacity(Math.max(asked.area_mm2, SHEET_BEGINS_mm2), {
    ...conditions,
    insulationLimit_degC: Math.max(limit_degC, SHEET_degC),
  });
  if (isKnown(sheet)) {
    // Made as I²R, shed as the rise over the air: the same balance of heat as for an engine space.
    const cooler = limit_degC < SHEET_degC ? Math.sqrt((limit_degC - AIR_degC) / (SHEET_degC - AIR_degC)) : 1;
    const thinner = Math.min(1, asked.area_mm2 / SHEET_BEGINS_mm2);
    return { amps: sheet.value * first.share * cooler * thinner, book: THIN_WALL.name };
  }
  return isKnown(first.answer)
    ? { amps: first.answer.value * first.share, book: first.book.name }
    : { amps: Number.POSITIVE_INFINITY, book: book.name };
}

function inEngineBay({ runs }: Harness, wire: Lead): boolean {
  return wire.runs.some((id) => runs[id]?.zone === "engine-bay");
}

/** "1 mm²" of "W3 (red), 1 mm²". */
export function saySize(wire: Wire): string {
  return wire.area_mm2 === "unknown" ? "of unknown size" : `${digits(wire.area_mm2)} mm²`;
}
