import type { Load, Speaker, Supply } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { BODY_TEXT } from "../../layout/geometry/caption.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import { drawCaption } from "./caption.ts";
import { LEAD, landings, leadsIn } from "./leads.ts";
import { box, circle, HAIR, HEAVY, inkStroke, line, MIDDLE, mirrored, path, run, words } from "./pen.ts";

/** A battery, a load or a speaker: both contacts on one side, the symbol between them. Shapes: IEC 60617 (from memory). */
export function drawOneSided(
  part: Supply | Load | Speaker,
  shape: Shape,
  left: boolean,
): readonly Primitive[] {
  const [plus, minus] = [landings(shape, 1), landings(shape, 2)];
  const [top, bottom] = [plus.at(-1) ?? 32, minus[0] ?? 64];
  const x = 46;
  const middle = (top + bottom) / 2;
  const { half, items } = symbol(part, x, middle);
  const drawn: Primitive[] = [
    ...leadsIn(shape, 1, 0, 16),
    ...leadsIn(shape, 2, 0, 16),
    line(16, top, x, top, LEAD),
    line(x, top, x, middle - half, LEAD),
    line(16, bottom, x, bottom, LEAD),
    line(x, middle + half, x, bottom, LEAD),
    ...items,
  ];
  const signed = part.kind !== "load" || part.polarised || part.type === "camera";
  if (signed) {
    drawn.push(
      ...words(22, top - 4, "+", { size: BODY_TEXT, weight: "bold", room: 12 }),
      ...words(22, bottom - 4, "−", { size: BODY_TEXT, weight: "bold", room: 12 }),
    );
  }
  return [...mirrored(drawn, shape.width, !left), ...drawCaption(part, shape.width, shape.height)];
}

type Drawn = { readonly half: number; readonly items: readonly Primitive[] };

function symbol(part: Supply | Load | Speaker, x: number, y: number): Drawn {
  if (part.kind === "supply") return battery(x, y);
  if (part.kind === "speaker") return speaker(x, y);
  return load(part, x, y);
}

/** Two cells: the long thin plate is plus, the short thick one minus. */
function battery(x: number, y: number): Drawn {
  return {
    half: 8,
    items: [
      line(x - 13, y - 8, x + 13, y - 8, LEAD),
      line(x - 6, y - 3, x + 6, y - 3, HEAVY * 1.8),
      line(x - 13, y + 3, x + 13, y + 3, LEAD),
      line(x - 6, y + 8, x + 6, y + 8, HEAVY * 1.8),
      line(x, y - 3, x, y + 3, HAIR, "ink", [1.5, 1.5]),
    ],
  };
}

function speaker(x: number, y: number): Drawn {
  return {
    half: 10,
    items: [
      box(x - 5, y - 10, 10, 20, { fill: "paper", stroke: inkStroke(LEAD) }),
      path(run([x + 5, y - 6, x + 16, y - 14, x + 16, y + 14, x + 5, y + 6]), {
        fill: "paper",
        stroke: inkStroke(LEAD),
      }),
    ],
  };
}

function load(part: Load, x: number, y: number): Drawn {
  const filled = { fill: "paper", stroke: inkStroke(LEAD) } as const;
  const ring = circle(x, y, 12, filled);
  const diagonal = 12 * Math.SQRT1_2;
  switch (part.type) {
    case "lamp":
      return {
        half: 12,
        items: [
          ring,
          line(x - diagonal, y - diagonal, x + diagonal, y + diagonal, LEAD),
          line(x - diagonal, y + diagonal, x + diagonal, y - diagonal, LEAD),
        ],
      };
    case "motor":
      return {
        half: 12,
        items: [
          ring,
          ...words(x, y + BODY_TEXT * MIDDLE, "M", {
            size: BODY_TEXT,
            weight: "bold",
            align: "middle",
            room: 20,
          }),
        ],
      };
    case "heater":
      return {
        half: 12,
        items: [
          box(x - 6, y - 12, 12, 24, filled),
          ...[-6, 0, 6].map((at) => line(x - 6, y + at, x + 6, y + at, LEAD)),
        ],
      };
    case "sounder":
      return {
        half: 9,
        items: [
          path(
            [
              ["M", x + 10, y - 11],
              ["L", x - 4, y - 11],
              ["C", x - 4, y - 11, x - 4, y + 11, x - 4, y + 11],
              ["L", x + 10, y + 11],
              ["C", x + 19, y + 7, x + 19, y - 7, x + 10, y - 11],
              ["Z"],
            ],
            filled,
          ),
        ],
      };
    case "camera":
      // No shape known in IEC 60617: a body with a lens, ours.
      return {
        half: 10,
        items: [
          box(x - 12, y - 10, 20, 20, { radius: 2, ...filled }),
          path(run([x + 8, y - 4, x + 16, y - 8, x + 16, y + 8, x + 8, y + 4], true), filled),
          circle(x - 2, y, 5, { stroke: inkStroke(HAIR) }),
        ],
      };
    case "antenna":
      return {
        half: 10,
        items: [
          box(x - 12, y - 10, 24, 20, filled),
          path(run([x - 7, y - 6, x + 7, y - 6, x, y + 2], true), { stroke: inkStroke() }),
          line(x, y - 6, x, y + 7),
        ],
      };
    case "other":
      return { half: 11, items: [box(x - 13, y - 11, 26, 22, filled)] };
  }
}
