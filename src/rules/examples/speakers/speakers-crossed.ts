import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const pairs = () =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      rows: {
        "1": "speaker-front-left-plus WH",
        "2": "speaker-front-left-minus WH/BK",
        "3": "speaker-front-right-plus GY",
        "4": "speaker-front-right-minus GY/BK",
      },
    })
    .part("speaker", "P1", { position: "front-left", impedance_ohm: 4 })
    .part("speaker", "P2", { position: "front-right", impedance_ohm: 4 });
const joined = (left: string, right: string): Build =>
  pairs().wire("A1.1", "P1.+").wire("A1.3", "P2.+").wire("A1.2", left).wire("A1.4", right);

export default defineExample({
  page: [
    "A speaker plays the difference between its two leads. Where they come from two channels, it plays what left and right differ in: echoes and edges, without voices and without bass.",
    "It comes about when single leads are exchanged, not whole pairs. The thump test finds it: a cell of 1.5 V for a moment across the two leads of one output must move one speaker, and only that one.",
  ],
  trips: () => joined("P2.−", "P1.−"),
  quiet: () => joined("P1.−", "P2.−"),
  quietBecause: "Both leads of each speaker go to the two leads of one output.",
});
