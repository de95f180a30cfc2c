import { lamp } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/sizes-far-apart-in-crimp.ts";
import { testRule } from "../test-rule.ts";

const crimp = (left: number | "unknown", right: number, known = {}) =>
  lamp({ method: "crimped-butt", ...known }, { area_mm2: left }, { area_mm2: right });

testRule(rule, {
  silent: [
    { name: "of one size", build: crimp(2.5, 2.5) },
    { name: "one barrel holds both", build: crimp(0.5, 1.5) },
    { name: "exactly twice", build: crimp(2.5, 5) },
    { name: "soldered", build: crimp(0.5, 4, { method: "solder-and-sleeve" }) },
    { name: "a size that nobody has said", build: crimp("unknown", 4) },
    {
      name: "one thick wire, two thin ones that make up for it",
      build: crimp(2.5, 1)
        .vehicle("X3", { "1": "illumination" })
        .wire("X3.1", "XJ1.2", "GY", { area_mm2: 1 }),
    },
  ],
  found: [
    {
      name: "0.5 to 4 mm²",
      build: crimp(0.5, 4),
      findings: [{ at: ["XJ1"], says: "W1 (grey), 0.5 mm², to W2 (grey), 4 mm²", fix: null }],
    },
    {
      name: "the other way round",
      build: crimp(2.5, 0.35),
      findings: [{ at: ["XJ1"], says: "W2 (grey), 0.35 mm², to W1 (grey), 2.5 mm²", fix: null }],
    },
    { name: "both too thick for a colour", build: crimp(6, 16), findings: [{ at: ["XJ1"], fix: null }] },
  ],
});
