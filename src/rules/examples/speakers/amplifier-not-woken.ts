import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const boxes = () =>
  build()
    .module("A1", {
      name: "radio receiver",
      role: "receiver",
      outputs: "bridged",
      rows: {
        "1": "speaker-front-left-plus WH",
        "2": "speaker-front-left-minus WH/BK",
        "3": "amplifier-turn-on BU/WH 0.2A",
      },
    })
    .module("A2", {
      name: "factory amplifier",
      side: "vehicle",
      role: "amplifier",
      rows: {
        "1": "speaker-front-left-plus takes WH",
        "2": "speaker-front-left-minus takes WH/BK",
        "3": "amplifier-turn-on takes GN 0.02A",
      },
    })
    .wire("A1.1", "A2.1")
    .wire("A1.2", "A2.2");

export default defineExample({
  page: [
    "A factory amplifier sleeps until the factory radio wakes it, by a lead with 12 V or by a word on the data bus. With the old radio gone nobody does, and all is silent although every speaker lead is right.",
    "Find out how the vehicle did it: a lead is joined to the new receiver's amplifier turn-on, a data bus needs an interface module.",
  ],
  trips: () => boxes(),
  quiet: () => boxes().wire("A1.3", "A2.3"),
  quietBecause: "The receiver's amplifier turn-on wakes the amplifier.",
});
