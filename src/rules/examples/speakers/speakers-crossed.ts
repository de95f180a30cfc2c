import type { Build } from "../build.ts";
import { defineExample } from "../example.ts";
import { withSpeakers } from "./receiver.ts";

const pairs = () => withSpeakers();
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
