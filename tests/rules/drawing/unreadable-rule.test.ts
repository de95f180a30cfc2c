import type { OwnRule } from "../../../src/rules/own/own-rule.ts";
import rule from "../../../src/rules/rules/drawing/unreadable-rule.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const own = (must: OwnRule["must"], id = "one"): OwnRule => ({
  id,
  words: `Rule ${id}`,
  severity: "tidy",
  of: "fuse",
  where: [],
  must: [...must],
});
const fuse = (...rules: readonly OwnRule[]) =>
  build()
    .part("fuse", "F1", { rating_A: 10, form: "regular" })
    .rules({ own: [...rules] });

testRule(rule, {
  silent: [
    { name: "no rules of its own", build: build().part("fuse", "F1") },
    {
      name: "a property that fuses have",
      build: fuse(own([{ property: "rating", is: "given", values: [] }])),
    },
    {
      name: "a number where a number is asked for",
      build: fuse(own([{ property: "rating", is: "at-most", values: ["30"] }])),
    },
  ],
  found: [
    {
      name: "no such property",
      build: fuse(own([{ property: "flavour", is: "given", values: [] }])),
      findings: [{ at: ["F1"], says: "“Rule one” (flavour)", fix: null }],
    },
    {
      name: "a number that is none, and another that is read well",
      build: fuse(
        own([{ property: "rating", is: "at-least", values: ["many"] }]),
        own([{ property: "rating", is: "at-least", values: ["5"] }], "two"),
      ),
      findings: [{ at: ["F1"], says: "“Rule one” (rating)", fix: null }],
    },
  ],
});
