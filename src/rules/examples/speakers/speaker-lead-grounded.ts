import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const receiver = () =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      rows: { "1": "speaker-rear-left-plus GN", "2": "speaker-rear-left-minus GN/BK" },
    })
    .part("speaker", "P1", { position: "rear-left", impedance_ohm: 4 })
    .wire("A1.1", "P1.+");

export default defineExample({
  page: [
    "Both leads of a bridged output stand at half the battery's volts. A lead on the frame pulls its stage down to nothing, and the whole half supply stands across it or across the speaker.",
    "It is often done on purpose, because a speaker that was silent plays when one lead is grounded: the lead that is missing is the minus back to the receiver. A pinched lead in a door does the same by accident.",
  ],
  trips: () => receiver().path("A1.2", "XJ1", "P1.−").wire("XJ1", "XE1", "BK"),
  quiet: () => receiver().wire("A1.2", "P1.−"),
  quietBecause: "Both leads of the speaker go back to the receiver, and none of them to the frame.",
});
