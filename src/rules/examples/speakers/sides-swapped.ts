import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const joined = (first: string, second: string): Build =>
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
    .part("speaker", "P2", { position: "front-right", impedance_ohm: 4 })
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
