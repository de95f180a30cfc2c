import type { AmpacityBook, AmpacityConditions } from "../conductor/ampacity-book.ts";
import { AMPACITY_BOOKS } from "../conductor/ampacity-books.ts";
import { FIVE_PER_MM2, THIN_WALL } from "../conductor/ampacity-vehicle.ts";
import type { Material } from "../conductor/material.ts";
import { type Answer, isKnown } from "../figure.ts";
import type { WireFacts } from "./built.ts";

/** Clad aluminium bears less than copper of the size: equal heat, so as the root of its conductivity. */
const SHARE: Readonly<Record<Material, number>> = {
  copper: 1,
  "tinned-copper": 1,
  "cca-15": Math.sqrt(0.644),
  "cca-10": Math.sqrt(0.629),
};

export type Chosen = { readonly book: AmpacityBook; readonly isHeard: boolean };

/** The book that the settings name; the first of all where they name none, or one that this version does not have. */
export function bookOf(id: string): Chosen {
  const book = AMPACITY_BOOKS.find((one) => one.id === id);
  return { book: book ?? AMPACITY_BOOKS[0]!, isHeard: book !== undefined || id === "unknown" };
}

/** Where a book does not have a size, the vehicle cable's sheet is asked, and last the rule of thumb. */
export function booksFor(book: AmpacityBook): readonly AmpacityBook[] {
  return [...new Set([book, THIN_WALL, FIVE_PER_MM2])];
}

export type Ampacity = { readonly answer: Answer; readonly book: AmpacityBook; readonly share: number };

/** What a wire may carry for good, with the book that says so. */
export function ampacityFor(book: AmpacityBook, facts: AskedWire, conditions: AmpacityConditions): Ampacity {
  const share = SHARE[facts.material];
  let first: Ampacity | null = null;
  for (const one of booksFor(book)) {
    const answer = one.ampacity(facts.area_mm2, conditions);
    const found = { answer, book: one, share };
    if (isKnown(answer)) return found;
    first ??= found;
  }
  return first!;
}

type AskedWire = Pick<WireFacts, "area_mm2" | "material">;

export function conditionsFor(
  facts: Pick<WireFacts, "limit_degC" | "engineSpace">,
  loadedInBundle: number,
  system_V: number,
): AmpacityConditions {
  return {
    insulationLimit_degC: facts.limit_degC,
    engineSpace: facts.engineSpace,
    loadedInBundle: Math.max(1, loadedInBundle),
    system_V,
  };
}

type Found = { readonly amperes: number | null; readonly book: AmpacityBook };

/**
 * Amperes as a bare number, for many wires: each kind of wire is looked up once for each count of neighbours.
 * @param system_V nominal
 */
export class AmpereTable {
  private readonly byCount: Map<string, Found>[] = [];

  constructor(
    readonly book: AmpacityBook,
    private readonly system_V: number,
  ) {}

  find(facts: WireFacts, loadedInBundle: number): Found {
    this.byCount[loadedInBundle] ??= new Map();
    const ofCount = this.byCount[loadedInBundle];
    let found = ofCount.get(facts.kind);
    if (!found) {
      const asked = { area_mm2: Math.max(facts.area_mm2, 0.001), material: facts.material };
      const conditions = conditionsFor(facts, loadedInBundle, this.system_V);
      const { answer, book, share } = ampacityFor(this.book, asked, conditions);
      found = { amperes: isKnown(answer) ? answer.value * share : null, book };
      ofCount.set(facts.kind, found);
    }
    return found;
  }
}
