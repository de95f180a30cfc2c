import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const amplifier = (plus: string, minus: string): Build =>
  build()
    .module("A1", {
      name: "amplifier",
      role: "amplifier",
      rows: {
        "1": "speaker-rear-left-plus takes spare",
        "2": "speaker-rear-left-minus takes spare",
        "3": "speaker-rear-left-plus gives spare",
        "4": "speaker-rear-left-minus gives spare",
      },
    })
    .part("speaker", "P1", { position: "rear-left", impedance_ohm: 4 })
    .wire(plus, "P1.+")
    .wire(minus, "P1.−");

export default defineExample({
  page: [
    "An amplifier with inputs for speaker level has two sets of terminals with the same names. A speaker on the inputs hears nothing, and nothing is broken.",
    "The other half of the same mistake, a source on the outputs, sets two outputs against each other. Draw inputs on the left and outputs on the right of every amplifier, and it is seen at once.",
  ],
  trips: () => amplifier("A1.1", "A1.2"),
  quiet: () => amplifier("A1.3", "A1.4"),
  quietBecause: "The speaker hangs on the outputs.",
});
