import rule from "../../../src/rules/rules/joints/too-many-wires-in-joint.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const joined = (
  count: number,
  method: "crimped-butt" | "solder-and-sleeve" | "terminal-block" | "bullet-pair" | "unknown",
) => {
  const built = build().part("splice", "XJ1", { method });
  for (let number = 1; number <= count; number++)
    built.vehicle(`X${number}`, { "1": "illumination" }).wire(`X${number}.1`, number % 2 ? "XJ1.1" : "XJ1.2");
  return built;
};

testRule(rule, {
  silent: [
    { name: "three in a crimp", build: joined(3, "crimped-butt") },
    { name: "four soldered", build: joined(4, "solder-and-sleeve") },
    { name: "eight in a terminal block", build: joined(8, "terminal-block") },
    { name: "nobody has said", build: joined(8, "unknown") },
    { name: "bullets with one on each side", build: joined(2, "bullet-pair") },
    {
      name: "four where the shop allows four",
      build: joined(4, "crimped-butt").rules({ limits: [{ name: "wiresInCrimp", value: 4 }] }),
    },
  ],
  found: [
    {
      name: "four in a crimp",
      build: joined(4, "crimped-butt"),
      findings: [
        { at: ["XJ1"], says: "XJ1 joins 4 wires: W1, W2, W3 and W4; a crimp holds 3 at most", fix: null },
      ],
    },
    { name: "five soldered", build: joined(5, "solder-and-sleeve"), findings: [{ at: ["XJ1"], fix: null }] },
    {
      name: "two in one bullet",
      build: joined(3, "bullet-pair"),
      findings: [{ at: ["XJ1"], says: "a bullet holds one", fix: null }],
    },
    {
      name: "three where the shop allows two",
      build: joined(3, "crimped-butt").rules({
        limits: [{ name: "wiresInCrimp", value: 2 }],
        shop: "Thistledown workshop",
      }),
      findings: [{ at: ["XJ1"], says: "the limit of Thistledown workshop", fix: null }],
    },
  ],
});
