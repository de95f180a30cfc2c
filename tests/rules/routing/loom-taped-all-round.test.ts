import { fused, loom } from "../../../src/rules/examples/routing/loom.ts";
import rule from "../../../src/rules/rules/routing/loom-taped-all-round.ts";
import { testRule } from "../test-rule.ts";

const taped = { zone: "cabin", covering: "cloth-tape", length_m: 2 } as const;

testRule(rule, {
  silent: [
    { name: "300 mm exactly", build: loom({ ...taped, length_m: 0.3 }) },
    { name: "split loom", build: loom({ ...taped, covering: "split-loom" }) },
    { name: "outside", build: loom({ ...taped, zone: "outside" }) },
    { name: "nobody has said how long", build: loom({ ...taped, length_m: "unknown" }) },
    { name: "one wire alone", build: fused(taped) },
  ],
  found: [
    {
      name: "2 m",
      build: loom(taped),
      findings: [
        { at: ["W1", "W2"], says: "B1 is taped all round for 2000 mm; 300 mm are the most", fix: null },
      ],
    },
    {
      name: "where the shop asks for less",
      build: loom({ ...taped, length_m: 0.2 }).rules({ limits: [{ name: "tapedInCabin_mm", value: 100 }] }),
      findings: [{ at: ["W1", "W2"], fix: null }],
    },
  ],
});
