import type { Build } from "../build.ts";
import { defineExample } from "../example.ts";
import { withSpeakers } from "./receiver.ts";

const joined = (first: string, second: string): Build =>
  withSpeakers()
    .wire("A1.1", `${first}.+`)
    .wire("A1.2", `${first}.−`)
    .wire("A1.3", `${second}.+`)
    .wire("A1.4", `${second}.−`);

export default defineExample({
  page: [
    "Each output is named for a seat. With the pairs of left and right exchanged everything plays, but on the wrong side: the balance works backwards, and the voice that says turn left comes from the right.",
    "Turn the balance fully to one side and listen. The cure moves whole pairs; single leads moved one by one make a crossed pair out of a harmless mistake.",
  ],
  trips: () => joined("P2", "P1"),
  quiet: () => joined("P1", "P2"),
  quietBecause: "Each output goes to the speaker that bears its name.",
});
