import type { Build } from "../build.ts";
import { defineExample } from "../example.ts";
import { withSpeakers } from "./receiver.ts";

const joined = (straight: boolean): Build => {
  const [plus, minus] = straight ? ["+", "−"] : ["−", "+"];
  return withSpeakers()
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
