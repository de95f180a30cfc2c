import { lamp } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/barrel-does-not-fit-wires.ts";
import { testRule } from "../test-rule.ts";

const crimp = (barrel: "red" | "blue" | "yellow" | "bare" | "unknown", left: number, right = left) =>
  lamp({ method: "crimped-butt", barrel }, { area_mm2: left }, { area_mm2: right });

testRule(rule, {
  silent: [
    { name: "red on 0.5 and 1.5 mm²", build: crimp("red", 0.5, 1.5) },
    { name: "blue on 1.5 and 2.5 mm²", build: crimp("blue", 1.5, 2.5) },
    { name: "yellow on 4 and 6 mm²", build: crimp("yellow", 4, 6) },
    { name: "no colour", build: crimp("bare", 10) },
    { name: "nobody has said", build: crimp("unknown", 10) },
    {
      name: "sizes that nobody has said",
      build: lamp(
        { method: "crimped-butt", barrel: "blue" },
        { area_mm2: "unknown" },
        { area_mm2: "unknown" },
      ),
    },
    {
      name: "a barrel left over from before it was soldered",
      build: lamp({ method: "solder-and-sleeve", barrel: "red" }, { area_mm2: 4 }),
    },
    {
      name: "two wires that fill the barrel together",
      build: lamp({ method: "crimped-butt", barrel: "blue" }, { area_mm2: 1.5 }, { area_mm2: 1 })
        .vehicle("X3", { "1": "illumination" })
        .wire("X3.1", "XJ1.2", "GY", { area_mm2: 1 }),
    },
  ],
  found: [
    {
      name: "red on 4 mm²",
      build: crimp("red", 4),
      findings: [{ at: ["XJ1"], says: "The red barrel of XJ1 is too small for W1 (grey), 4 mm²", fix: null }],
    },
    {
      name: "yellow on 0.5 mm²",
      build: crimp("yellow", 0.5),
      findings: [{ at: ["XJ1"], says: "too large", fix: null }],
    },
    {
      name: "one side of it",
      build: crimp("blue", 1.5, 0.5),
      findings: [{ at: ["XJ1"], says: "W2", fix: null }],
    },
    {
      name: "too much on one side, one size not stated",
      build: lamp({ method: "crimped-butt", barrel: "red" }, { area_mm2: 1 }, { area_mm2: 2.5 })
        .vehicle("X3", { "1": "illumination" })
        .wire("X3.1", "XJ1.2"),
      findings: [{ at: ["XJ1"], says: "2.5 mm² together", fix: null }],
    },
  ],
});
