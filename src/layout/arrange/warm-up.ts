import type { ArrangeBlock, ArrangeProblem } from "./types.ts";

const ROWS = 12;

/** A small adapter that makes the engine compile the code a real one will need. */
export function warmUpProblem(): ArrangeProblem {
  const rows = Array.from({ length: ROWS }, (_, row) => row);
  const housing = (id: string, column: "vehicle" | "equipment"): ArrangeBlock => {
    const side = column === "vehicle" ? "right" : "left";
    const width = 160;
    return {
      id,
      width,
      height: 24 * ROWS,
      ports: rows.map((row) => ({ contact: row, x: side === "left" ? 0 : width, y: 24 * row + 8, side })),
      column,
      pinned: null,
      stub: { left: 64, right: 64 },
    };
  };
  const joint = (row: number): ArrangeBlock => ({
    id: `joint ${row}`,
    width: 48,
    height: 40,
    ports: [
      { contact: 1, x: 0, y: 24, side: "left" },
      { contact: 2, x: 48, y: 24, side: "right" },
    ],
    column: "between",
    pinned: null,
    stub: { left: 64, right: 64 },
  });
  return {
    blocks: [housing("vehicle", "vehicle"), housing("equipment", "equipment"), ...rows.map(joint)],
    wires: rows.flatMap((row) => [
      {
        id: `${row} left`,
        from: { block: "vehicle", contact: row },
        to: { block: `joint ${row}`, contact: 1 },
      },
      {
        id: `${row} right`,
        from: { block: `joint ${row}`, contact: 2 },
        to: { block: "equipment", contact: (5 * row) % ROWS },
      },
    ]),
  };
}
