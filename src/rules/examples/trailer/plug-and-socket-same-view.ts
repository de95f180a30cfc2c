import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const ROWS = {
  "1": "indicator-left",
  "2": "stop-lamp",
  "3": "indicator-right",
  "4": "tail-left",
  "5": "ground",
  "6": "tail-right",
};
const FACE = [
  [1, 2, 3],
  [4, 5, 6],
];
const pair = (view: "mating-face" | "wire-side") =>
  build()
    .unit("X1", Object.fromEntries(Object.keys(ROWS).map((label) => [label, "unknown"])), {
      gender: "plug",
      view: "wire-side",
      rows: FACE,
    })
    .unit("X2", ROWS, { gender: "receptacle", view, rows: FACE })
    .mate("X1", "X2");

export default defineExample({
  page: [
    "A plug and its socket look at each other: what is left on the one is right on the other. Two drawings of one and the same face, both from the wire side, cannot be right.",
    "Take the housing into the hand, find the number beside a corner, and state from which side you looked.",
  ],
  trips: () => pair("wire-side"),
  quiet: () => pair("mating-face"),
  quietBecause:
    "The plug from its wire side and the socket from its mating face are looked at in one direction.",
});
