import { contactsOf } from "../../src/graph/contacts.ts";
import type {
  Cable,
  Connector,
  End,
  Harness,
  Run,
  RunId,
  TitleBlock,
  Wire,
} from "../../src/graph/harness.ts";
import { makeRun, Names } from "../../src/graph/make.ts";
import type { Build } from "../../tests/build.ts";

/** The face of the ISO 10487 blocks A and B, seen from the wire side of the half on the cable. */
export const BLOCK_FACE = [
  [1, 3, 5, 7],
  [2, 4, 6, 8],
] as const;

const OWNER = "Thistledown county mobile library";

/** What the workshop writes on every sheet. */
export function titleBlock(number: string, title: string, more: Partial<TitleBlock>): Partial<TitleBlock> {
  return {
    owner: OWNER,
    documentNumber: `TML-${number}`,
    revision: "A",
    dateOfIssue: "2026-03-02",
    title,
    creator: "workshop",
    approver: "fleet office",
    documentType: "wiring diagram",
    status: "released",
    vehicle: "step van Wren",
    ...more,
  };
}

export type Lengths = {
  /** Of a wire by its designation. */
  readonly [designation: string]: number;
};

type Finish = {
  readonly title: Partial<TitleBlock>;
  /** Every wire that has no length of its own. */
  readonly length_m: number;
  readonly lengths?: Lengths;
  /** Every wire whose chart gives no size. */
  readonly area_mm2: number;
};

/**
 * Fills in what a bench knows and a chart does not say: sizes after the lead of the cavity they stand in, else
 * after what they are spliced to; lengths; insulation; the title block.
 */
export function finish(build: Build, { title, length_m, lengths = {}, area_mm2 }: Finish): Harness {
  const { harness } = build;
  const wires = Object.fromEntries(
    Object.values(harness.wires).map((wire): [string, Wire] => [
      wire.id,
      {
        ...wire,
        area_mm2: wire.area_mm2 === "unknown" ? (chartedArea(harness, wire.ends) ?? area_mm2) : wire.area_mm2,
        length_m: wire.length_m === "unknown" ? (lengths[wire.designation] ?? length_m) : wire.length_m,
        insulation: "thin-wall-105",
      },
    ]),
  );
  return { ...harness, wires, titleBlock: { ...harness.titleBlock, ...title } };
}

function chartedArea(harness: Harness, ends: readonly End[]): number | null {
  for (const end of ends) {
    const part = end === "loose" ? undefined : harness.parts[end.part];
    const area =
      end === "loose" || !part ? undefined : contactsOf(part)[end.contact - 1]?.cavity?.lead?.area_mm2;
    if (typeof area === "number") return area;
  }
  return null;
}

/** Adds a stretch of the bundle and lets the wires named follow it. */
export function withRun(
  harness: Harness,
  { designation, ...known }: Pick<Run, "designation"> & Partial<Omit<Run, "id">>,
  follows: (wire: Wire) => boolean,
): Harness {
  const id = new Names(harness).id("runs") as RunId;
  const wires = Object.fromEntries(
    Object.values(harness.wires).map((wire) => [
      wire.id,
      follows(wire) ? { ...wire, runs: [...wire.runs, id] } : wire,
    ]),
  );
  return { ...harness, wires, runs: { ...harness.runs, [id]: makeRun(id, designation, known) } };
}

/** Adds a cable of the wires with these designations. */
export function withCable(
  harness: Harness,
  kind: Cable["kind"],
  wires: readonly string[],
  shield: string | null = null,
  note = "",
): Harness {
  const names = new Names(harness);
  const id = names.id("cables") as Cable["id"];
  const idOf = (designation: string) => {
    const found = Object.values(harness.wires).find((wire) => wire.designation === designation);
    if (!found) throw new Error(`there is no wire ${designation}`);
    return found.id;
  };
  const designation = `WC${Object.keys(harness.cables).length + 1}`;
  const cable: Cable = {
    id,
    designation,
    kind,
    wires: wires.map(idOf),
    shield: shield ? idOf(shield) : null,
    note,
  };
  return { ...harness, cables: { ...harness.cables, [id]: cable } };
}

/** The face of a housing whose cavities are numbered row by row. */
export function rowsOf(...counts: readonly number[]): Connector["rows"] {
  let next = 1;
  return counts.map((count) => Array.from({ length: count }, () => next++));
}
