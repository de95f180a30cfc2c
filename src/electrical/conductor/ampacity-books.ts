import { AIRCRAFT_BUNDLES } from "./ampacity-aircraft.ts";
import type { AmpacityBook } from "./ampacity-book.ts";
import { CFR_AS_WRITTEN, CFR_BUNDLED } from "./ampacity-cfr.ts";
import { FIVE_PER_MM2, THIN_WALL } from "./ampacity-vehicle.ts";

/** The books a person may choose from. The first is the one taken where none is chosen. */
export const AMPACITY_BOOKS: readonly AmpacityBook[] = [
  CFR_BUNDLED,
  CFR_AS_WRITTEN,
  THIN_WALL,
  AIRCRAFT_BUNDLES,
  FIVE_PER_MM2,
];

/** @throws RangeError for an id that no book has */
export function ampacityBook(id: string): AmpacityBook {
  const book = AMPACITY_BOOKS.find((one) => one.id === id);
  if (!book) {
    throw new RangeError(
      `no ampacity book "${id}"; there are ${AMPACITY_BOOKS.map((one) => one.id).join(", ")}`,
    );
  }
  return book;
}
