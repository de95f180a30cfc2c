import { defineExample } from "../example.ts";
import { loom } from "./loom.ts";

export default defineExample({
  page: [
    "Ignition leads carry tens of thousands of volts in short bursts. Whatever lies beside them crackles, and through old insulation sparks jump over.",
    "Keep 100 mm off, and cross them at a right angle if you must.",
  ],
  trips: () => loom({ near: ["ignition"] }),
  quiet: () => loom({ near: ["ignition"], covering: "conduit" }),
  quietBecause: "The loom lies in conduit there.",
});
