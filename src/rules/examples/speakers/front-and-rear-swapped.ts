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
        "3": "speaker-rear-left-plus GY",
        "4": "speaker-rear-left-minus GY/BK",
      },
    })
    .part("speaker", "P1", { position: "front-left", impedance_ohm: 4 })
    .part("speaker", "P2", { position: "rear-left", impedance_ohm: 4 })
    .wire("A1.1", `${first}.+`)
    .wire("A1.2", `${first}.−`)
    .wire("A1.3", `${second}.+`)
    .wire("A1.4", `${second}.−`);

export default defineExample({
  page: [
    "With the pairs of front and rear exchanged the fader works backwards, and the telephone, the warnings and the spoken directions come from behind the driver.",
    "Rear outputs that drive tweeters in front on purpose, on their own side, are left alone; so is a unit with two channels that drives front and rear alike.",
  ],
  trips: () => joined("P2", "P1"),
  quiet: () => joined("P1", "P2"),
  quietBecause: "Each output goes to the speaker that bears its name.",
});
