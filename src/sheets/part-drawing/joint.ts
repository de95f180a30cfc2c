import type { Cap, Splice } from "../../graph/harness.ts";
import type { Primitive } from "../../layout/drawing.ts";
import { SMALL_TEXT } from "../../layout/geometry/caption.ts";
import type { Shape } from "../../layout/geometry/shape.ts";
import { LEAD, landings, leadsIn } from "./leads.ts";
import { box, circle, HAIR, inkStroke, line, MIDDLE, mirrored, path, RULE, run, words } from "./pen.ts";

type Joint = { readonly letter: string; readonly words: string };

/** How a joint is made: a letter on the drawing, the words in the legend. Letters are ours. */
export const JOINTS: Readonly<Record<Splice["method"], Joint>> = {
  "solder-and-sleeve": { letter: "S", words: "soldered, in a sleeve" },
  "crimped-butt": { letter: "C", words: "crimped butt joint" },
  "bullet-pair": { letter: "B", words: "bullet pair, can be parted" },
  tap: { letter: "T", words: "tap" },
  "terminal-block": { letter: "K", words: "terminal block" },
  twisted: { letter: "W", words: "twisted only" },
  "twist-on-nut": { letter: "N", words: "twist-on nut" },
  unknown: { letter: "?", words: "joint not stated" },
};

/** How a spare is made safe: letters and words as for joints. */
export const CAPS: Readonly<Record<Cap["method"], Joint>> = {
  "end-cap": { letter: "E", words: "end cap" },
  "sleeve-folded-back": { letter: "F", words: "folded back in a sleeve" },
  "crimp-cap": { letter: "C", words: "crimped cap" },
  tape: { letter: "T", words: "taped" },
  unknown: { letter: "?", words: "cap not stated" },
};

const COVER_WORDS: Readonly<Record<Splice["cover"], string>> = {
  "adhesive-sleeve": "sleeve with adhesive",
  sleeve: "sleeve",
  tape: "tape",
  "cloth-over-tape": "tape under cloth tape",
  housing: "housing",
  none: "nothing",
  unknown: "",
};

const BARREL_WORDS: Readonly<Record<Splice["barrel"], string>> = {
  red: ", red barrel",
  blue: ", blue barrel",
  yellow: ", yellow barrel",
  bare: ", bare barrel",
  unknown: "",
};

const LIVE_HALF_WORDS: Readonly<Record<Splice["liveHalf"], string>> = {
  shrouded: ", feed in the shrouded half",
  bare: ", feed in the bare half",
  unknown: "",
};

/** How a joint is made and covered, in words for a table. */
export function jointWords(part: Splice): string {
  const cover = COVER_WORDS[part.cover];
  const made = `${JOINTS[part.method].words}${BARREL_WORDS[part.barrel]}${LIVE_HALF_WORDS[part.liveHalf]}`;
  if (part.method === "solder-and-sleeve") {
    const inSleeve = part.cover === "adhesive-sleeve" || part.cover === "sleeve";
    return `soldered, ${inSleeve || cover === "" ? `in a ${cover || "sleeve"}` : `covered by ${cover}`}`;
  }
  // These bring their own housing.
  const own = part.cover === "housing" && ["bullet-pair", "tap", "terminal-block"].includes(part.method);
  return cover === "" || own ? made : `${made}, covered by ${cover}`;
}

const HALF = 16;
const FILLED = { fill: "paper", stroke: inkStroke(RULE) } as const;

/** A splice: its body between the two sides, shaped by how it is made, the letter inside. */
export function drawSplice(part: Splice, shape: Shape, turned: boolean): readonly Primitive[] {
  const middle = shape.width / 2;
  const y = landings(shape, 1)[0] ?? shape.height / 2;
  const body = HALF + 2;
  const tie = middle - body - 2;
  const items: Primitive[] = [
    ...leadsIn(shape, 1, 0, tie),
    ...mirrored(leadsIn(shape, 2, 0, tie), shape.width, true),
    line(tie, y, shape.width - tie, y, LEAD),
    ...jointBody(part.method, middle, y),
  ];
  return [
    ...mirrored(items, shape.width, turned),
    ...words(middle, y + SMALL_TEXT * MIDDLE, JOINTS[part.method].letter, {
      size: SMALL_TEXT,
      weight: "bold",
      align: "middle",
      room: 20,
    }),
    ...words(middle, 12, part.designation, {
      size: SMALL_TEXT,
      weight: "bold",
      align: "middle",
      room: shape.width,
    }),
  ];
}

/** The body of a joint about a point, 32 wide. */
export function jointBody(method: Splice["method"], x: number, y: number): readonly Primitive[] {
  const [l, r] = [x - HALF, x + HALF];
  switch (method) {
    case "solder-and-sleeve":
      return [box(l, y - 8, 2 * HALF, 16, { radius: 8, ...FILLED })];
    case "crimped-butt":
      // A barrel with the two indents of the tool.
      return [
        path(
          run(
            [
              l,
              y - 8,
              l + 5,
              y - 8,
              l + 8,
              y - 4.5,
              l + 11,
              y - 8,
              r - 11,
              y - 8,
              r - 8,
              y - 4.5,
              r - 5,
              y - 8,
            ]
              .concat([r, y - 8, r, y + 8, r - 5, y + 8, r - 8, y + 4.5, r - 11, y + 8])
              .concat([l + 11, y + 8, l + 8, y + 4.5, l + 5, y + 8, l, y + 8]),
            true,
          ),
          FILLED,
        ),
      ];
    case "bullet-pair":
      // The round nose stands in the open socket.
      return [
        path(
          [
            ["M", l, y - 8],
            ["L", r - 9, y - 8],
            ["C", r + 2, y - 8, r + 2, y + 8, r - 9, y + 8],
            ["L", l, y + 8],
            ["Z"],
          ],
          FILLED,
        ),
        path(
          [
            ["M", l + 8, y - 8],
            ["C", l + 12, y - 4, l + 12, y + 4, l + 8, y + 8],
          ],
          { stroke: inkStroke(HAIR) },
        ),
      ];
    case "tap":
      return [path(run([l, y - 8, r, y - 8, x + 7, y + 8.5, x - 7, y + 8.5], true), FILLED)];
    case "terminal-block":
      return [
        box(l, y - 8, 2 * HALF, 16, FILLED),
        ...[l + 5, r - 5].flatMap((at) => [
          circle(at, y, 3, { stroke: inkStroke(HAIR) }),
          line(at - 2, y + 2, at + 2, y - 2, HAIR),
        ]),
      ];
    case "twisted":
      return [
        path(run([l, y, l + 6, y - 8, r - 6, y - 8, r, y, r - 6, y + 8, l + 6, y + 8], true), FILLED),
        line(l + 6, y + 5, l + 10, y - 5, HAIR),
        line(r - 10, y + 5, r - 6, y - 5, HAIR),
      ];
    case "twist-on-nut":
      return [path(run([l + 3, y - 5, r, y - 8.5, r, y + 8.5, l + 3, y + 5], true), FILLED)];
    case "unknown":
      return [box(l, y - 8, 2 * HALF, 16, { fill: "paper", stroke: inkStroke(RULE, [3, 2]) })];
  }
}

/** A cap on the end of a spare lead. */
export function drawCap(part: Cap, shape: Shape, left: boolean): readonly Primitive[] {
  const y = landings(shape, 1)[0] ?? shape.height / 2;
  const x = 20;
  const items: Primitive[] = [
    ...leadsIn(shape, 1, 0, 7),
    line(7, y, 10, y, LEAD),
    ...capBody(part.method, x, y),
    ...words(x, y + SMALL_TEXT * MIDDLE, CAPS[part.method].letter, {
      size: SMALL_TEXT,
      weight: "bold",
      align: "middle",
      room: 16,
    }),
  ];
  return [
    ...mirrored(items, shape.width, !left),
    ...words(shape.width / 2, 12, part.designation, {
      size: SMALL_TEXT,
      weight: "bold",
      align: "middle",
      room: shape.width,
    }),
  ];
}

/** The body of a cap about a point, 20 wide, open towards the left. */
export function capBody(method: Cap["method"], x: number, y: number): readonly Primitive[] {
  const [l, r] = [x - 10, x + 10];
  switch (method) {
    case "end-cap":
      return [
        path(
          [
            ["M", l, y - 8],
            ["L", r - 6, y - 8],
            ["C", r + 4, y - 8, r + 4, y + 8, r - 6, y + 8],
            ["L", l, y + 8],
            ["Z"],
          ],
          FILLED,
        ),
      ];
    case "sleeve-folded-back":
      return [
        box(l, y - 8, 20, 16, { radius: 3, ...FILLED }),
        path([
          ["M", l, y - 8.5],
          ["L", r - 2, y - 8.5],
          ["C", r + 7, y - 8.5, r + 7, y + 8.5, r - 2, y + 8.5],
          ["L", l + 4, y + 8.5],
        ]),
      ];
    case "crimp-cap":
      return [
        path(
          run(
            [l, y - 8, x - 3, y - 8, x, y - 5.5, x + 3, y - 8, r, y - 8, r, y + 8, x + 3, y + 8].concat([
              x,
              y + 5.5,
              x - 3,
              y + 8,
              l,
              y + 8,
            ]),
            true,
          ),
          FILLED,
        ),
      ];
    case "tape":
      return [
        path(run([l, y - 8, r - 3, y - 8, r, y + 8, l + 3, y + 8], true), FILLED),
        line(r - 6, y - 8, r - 3, y + 8, HAIR),
      ];
    case "unknown":
      return [box(l, y - 8, 20, 16, { fill: "paper", stroke: inkStroke(RULE, [3, 2]) })];
  }
}
