import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const EITHER = { label: "2", position: "unset", wanted: "either", meaning: "beep at reverse" } as const;
const SET = { label: "1", position: "on", wanted: "on", meaning: "van of this family" } as const;
const AMISS = { label: "1", position: "unset", wanted: "on", meaning: "van of this family" } as const;

export default defineExample({
  page: [
    "A switch that nobody has written down is set by chance, and after a repair nobody can set it again.",
    "Look at the module, write the position down, and add a photograph.",
  ],
  trips: () => build().module("A1", { role: "interface", switches: [AMISS, EITHER] }),
  quiet: () => build().module("A1", { role: "interface", switches: [SET, EITHER] }),
  quietBecause: "The position of switch 1 is written down, and switch 2 may stand either way.",
});
