import { type Build, build } from "../build.ts";
import { defineExample } from "../example.ts";

const joined = (straight: boolean): Build => {
  const [plus, minus] = straight ? ["+", "−"] : ["−", "+"];
  return build()
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
    .wire("A1.1", `P1.${plus}`)
    .wire("A1.2", `P1.${minus}`)
    .wire("A1.3", `P2.${plus}`)
    .wire("A1.4", `P2.${minus}`);
};

export default defineExample({
  page: [
    "Where every speaker of a unit is reversed, all of them still move together, and nobody hears it.",
    "It is worth a note, because the next person who adds a speaker the right way round will have one that works against all the others.",
  ],
  trips: () => joined(false),
  quiet: () => joined(true),
  quietBecause: "Every speaker is plus to plus.",
});
