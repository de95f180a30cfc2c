import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const factory = () =>
  build().module("A2", {
    name: "factory amplifier",
    side: "vehicle",
    role: "amplifier",
    wakes: "by-signal",
    rows: { "1": "speaker-rear-left-plus takes GN", "2": "speaker-rear-left-minus takes GN/BK" },
  });

export default defineExample({
  page: [
    "An input for speaker level divides what it gets by ten or so before it amplifies. Line level in that place is much too little: it plays, but softly and with hiss.",
    "A speaker itself is worse off: a line output has no power to move it.",
  ],
  trips: () =>
    factory()
      .module("A1", {
        name: "radio receiver",
        role: "receiver",
        rows: { L: "line-rear-left-signal gives", S: "line-rear-left-shield gives" },
      })
      .wire("A1.L", "A2.1")
      .wire("A1.S", "A2.2"),
  quiet: () =>
    factory()
      .module("A1", {
        name: "radio receiver",
        role: "receiver",
        rows: { "5": "speaker-rear-left-plus GN", "6": "speaker-rear-left-minus GN/BK" },
      })
      .wire("A1.5", "A2.1")
      .wire("A1.6", "A2.2"),
  quietBecause: "The inputs get what they are made for, from the receiver's speaker outputs.",
});
