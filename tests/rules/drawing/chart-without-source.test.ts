import rule from "../../../src/rules/rules/drawing/chart-without-source.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const plug = (chart: { title: string; edition: string; date: string; measured: boolean } | null) =>
  build().vehicle("X1", { "1": "mute spare" }, { chart });

testRule(rule, {
  silent: [
    { name: "no chart at all", build: plug(null) },
    { name: "a title", build: plug({ title: "Radio plug", edition: "", date: "", measured: false }) },
    { name: "found with a meter", build: plug({ title: "", edition: "", date: "", measured: true }) },
  ],
  found: [
    {
      name: "neither",
      build: plug({ title: "", edition: "2", date: "2026-01-04", measured: false }),
      findings: [{ at: ["X1"], says: "The chart of X1 has no title", fix: null }],
    },
    {
      name: "blanks are no title",
      build: plug({ title: "  ", edition: "", date: "", measured: false }),
      findings: [{ at: ["X1"], fix: null }],
    },
  ],
});
