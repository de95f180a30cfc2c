import type { Run } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/spares/unused-hole-open.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const tail = (second: string, zone: Run["zone"] = "outside", form: "housing" | "flying-leads" = "housing") =>
  build()
    .vehicle("X1", { "1": "reverse-lamp GN" })
    .unit("X2", { "1": "reverse-lamp", "2": second }, { form })
    .wire("X1.1", "X2.1", "GN")
    .run("R1", { zone }, ["W1"]);

testRule(rule, {
  silent: [
    { name: "the hole is plugged", build: tail("not-used plugged") },
    { name: "the cabin is dry", build: tail("not-used", "cabin") },
    { name: "flying leads have no holes", build: tail("not-used", "outside", "flying-leads") },
    { name: "nobody has said where it lies", build: tail("not-used", "unknown") },
    { name: "the chart gives a lead in it", build: tail("mute BN") },
  ],
  found: [
    {
      name: "an empty hole outside",
      build: tail("not-used"),
      findings: [{ at: ["X2.2"], says: "cavity 2 is empty", fix: "Note cavity plugs in X2.2" }],
    },
    {
      name: "two in the engine bay",
      build: build()
        .vehicle("X1", { "1": "horn GN", "2": "not-used", "3": "unknown" })
        .wire("X1.1", "XC1")
        .run("R1", { zone: "engine-bay" }, ["W1"]),
      findings: [
        {
          at: ["X1.2", "X1.3"],
          says: "cavities 2 and 3 are empty",
          fix: "Note cavity plugs in X1.2 and X1.3",
        },
      ],
    },
  ],
});
