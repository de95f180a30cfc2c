import rule from "../../../src/rules/rules/trailer/plug-and-socket-same-view.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type View = "mating-face" | "wire-side";
type Rows = readonly (readonly number[])[];
const FACE: Rows = [
  [1, 2, 3],
  [4, 5, 6],
];
const MIRROR: Rows = [
  [3, 2, 1],
  [6, 5, 4],
];
const ROWS = {
  "1": "unknown",
  "2": "unknown",
  "3": "unknown",
  "4": "unknown",
  "5": "unknown",
  "6": "unknown",
};
const LAMPS = { ...ROWS, "1": "tail-left", "3": "tail-right" };
const pair = (
  views: readonly [View, View],
  faces: readonly [Rows, Rows] = [FACE, FACE],
  sex: "plug" | "receptacle" | "unknown" = "receptacle",
  cavities: Readonly<Record<string, string>> = ROWS,
) => {
  const rows = faces.map((face) => face.map((row) => [...row]));
  return build()
    .unit("X1", ROWS, { gender: "plug", view: views[0], rows: rows[0]! })
    .unit("X2", cavities, { gender: sex, view: views[1], rows: rows[1]! })
    .mate("X1", "X2");
};

testRule(rule, {
  silent: [
    { name: "looked at in one direction", build: pair(["wire-side", "mating-face"]) },
    {
      name: "mirrored, both from the mating face",
      build: pair(["mating-face", "mating-face"], [FACE, MIRROR]),
    },
    {
      name: "nobody has said which is the plug",
      build: pair(["wire-side", "wire-side"], [FACE, FACE], "unknown"),
    },
    {
      name: "one column is its own mirror image",
      build: pair(
        ["wire-side", "wire-side"],
        [
          [[1], [2], [3], [4], [5], [6]],
          [[1], [2], [3], [4], [5], [6]],
        ],
      ),
    },
    {
      name: "not mated",
      build: build().unit("X1", ROWS, { gender: "plug" }).unit("X2", ROWS, { gender: "receptacle" }),
    },
  ],
  found: [
    {
      name: "one and the same face from the wire side",
      build: pair(["wire-side", "wire-side"]),
      findings: [{ at: ["X1", "X2"], says: "their faces are the same", fix: null }],
    },
    {
      name: "left and right in it",
      build: pair(["mating-face", "mating-face"], [FACE, FACE], "receptacle", LAMPS),
      findings: [{ at: ["X1", "X2"], severity: "fault", fix: null }],
    },
    {
      name: "mirrored, and yet from opposite sides",
      build: pair(["wire-side", "mating-face"], [FACE, MIRROR]),
      findings: [{ at: ["X1", "X2"], says: "mirror images", fix: null }],
    },
  ],
});
