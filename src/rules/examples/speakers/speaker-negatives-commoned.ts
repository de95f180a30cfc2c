import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const receiver = (outputs: "bridged" | "common-negative") =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs,
      rows: {
        "1": "speaker-front-left-plus WH",
        "2": "speaker-front-left-minus WH/BK",
        "3": "speaker-front-right-plus GY",
        "4": "speaker-front-right-minus GY/BK",
      },
    })
    .part("speaker", "P1", { position: "front-left", impedance_ohm: 4 })
    .part("speaker", "P2", { position: "front-right", impedance_ohm: 4 })
    .wire("A1.1", "P1.+")
    .wire("A1.3", "P2.+")
    .path("A1.2", "XJ1", "P1.−")
    .path("A1.4", "XJ1")
    .wire("XJ1", "P2.−", "BK");

export default defineExample({
  page: [
    "A bridged output has two output stages, one for each lead of the speaker, and both leads stand at half the battery's volts. The minus of one channel is not the minus of another.",
    "Tied together, the stages of two channels drive each other. With the unit on and silent, a meter from a speaker lead to the frame shows it: about half the battery's volts says bridged, about 0 V says that the minus is the frame.",
  ],
  trips: () => receiver("bridged"),
  quiet: () => receiver("common-negative"),
  quietBecause: "This receiver's sheet says that the negatives of its outputs are one lead inside.",
});
