import type { Module } from "../../../graph/harness.ts";
import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const box = (near: Module["near"]) =>
  build().module("A1", {
    name: "interface box",
    role: "interface",
    near: [...near],
    rows: { "1": "mute both optional" },
  });

export default defineExample({
  page: [
    "Vehicle makers keep the places clear where knees and heads strike in a crash. A box, a bracket or a microphone stalk fastened there undoes that.",
    "Before it is fastened, sit in the seat, belt on, and reach about: what can be reached by a knee or a head is the wrong place.",
  ],
  trips: () => box(["knees-or-heads"]),
  quiet: () => box([]),
  quietBecause: "The box stands out of reach.",
});
