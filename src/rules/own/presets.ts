import type { OwnRule } from "./own-rule.ts";

/** Rules that many shops keep, to begin from. */
export const PRESETS: readonly OwnRule[] = [
  {
    id: "sealed-outside",
    words: "Every joint outside the cabin is sealed",
    severity: "fault",
    of: "joint",
    where: [{ property: "zone", is: "one-of", values: ["outside", "engine-bay", "door"] }],
    must: [{ property: "cover", is: "one-of", values: ["adhesive-sleeve", "housing"] }],
  },
  {
    id: "no-taps",
    words: "No tap connectors",
    severity: "weak",
    of: "joint",
    where: [],
    must: [{ property: "method", is: "none-of", values: ["tap"] }],
  },
  {
    id: "labelled",
    words: "Every wire is labelled at both ends",
    severity: "tidy",
    of: "wire",
    where: [],
    must: [{ property: "label", is: "given", values: [] }],
  },
  {
    id: "ground-colours",
    words: "Ground wires are black or brown",
    severity: "tidy",
    of: "wire",
    where: [{ property: "carries", is: "one-of", values: ["ground"] }],
    must: [{ property: "base-colour", is: "one-of", values: ["BK", "BN"] }],
  },
];
