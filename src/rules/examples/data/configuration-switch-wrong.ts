import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const EITHER = { label: "2", position: "unset", wanted: "either", meaning: "beep at reverse" } as const;
const SET = { label: "1", position: "on", wanted: "on", meaning: "van of this family" } as const;
const AMISS = { label: "1", position: "off", wanted: "on", meaning: "van of this family" } as const;

export default defineExample({
  page: [
    "A module that knows many vehicles is told by small switches which of them it is in. One of them set wrong, and the steering-wheel keys, the chimes or the amplifier stay dead, although every wire is right.",
    "Write down what the chart asks for, set it with the power off, and take a photograph.",
  ],
  trips: () => build().module("A1", { role: "interface", switches: [AMISS, EITHER] }),
  quiet: () => build().module("A1", { role: "interface", switches: [SET, EITHER] }),
  quietBecause: "Switch 1 stands as wanted, and of switch 2 the chart says that either will do.",
});
