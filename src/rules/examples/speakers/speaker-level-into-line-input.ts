import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build().module("A1", {
    name: "radio receiver",
    role: "receiver",
    outputs: "bridged",
    rows: { "1": "speaker-rear-left-plus GN", "2": "speaker-rear-left-minus GN/BK" },
  });

export default defineExample({
  page: [
    "A speaker output swings 2 to 15 V and more, a line input is made for 0.5 to 4 V. Besides, both leads of a bridged output step to half the battery's volts when the unit comes on, and that goes through as a thump.",
    "A line output converter between them brings the level down and, where it has a transformer, keeps the step out. Many amplifiers have inputs for speaker level of their own: on the drawing those are speaker leads that take.",
  ],
  trips: () =>
    boxes()
      .module("A2", {
        name: "amplifier",
        role: "amplifier",
        rows: { IN: "line-rear-left-signal takes", S: "line-rear-left-shield takes" },
      })
      .wire("A1.1", "A2.IN")
      .wire("A1.2", "A2.S"),
  quiet: () =>
    boxes()
      .module("A2", {
        name: "amplifier",
        role: "amplifier",
        rows: { "H+": "speaker-rear-left-plus takes", "H-": "speaker-rear-left-minus takes" },
      })
      .wire("A1.1", "A2.H+")
      .wire("A1.2", "A2.H-"),
  quietBecause: "The amplifier's inputs are marked for speaker level.",
});
