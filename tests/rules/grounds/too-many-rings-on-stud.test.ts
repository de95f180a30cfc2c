import rule from "../../../src/rules/rules/grounds/too-many-rings-on-stud.ts";
import { type Build, build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rings = (count: number, at = "XE1"): Build => {
  const made = at.startsWith("G1") ? build().part("supply", "G1") : build();
  for (let index = 1; index <= count; index++)
    made.part("load", `E${index}`, { type: "lamp" }).path(`E${index}.−`, at);
  return made;
};

testRule(rule, {
  silent: [
    { name: "four", build: rings(4) },
    {
      name: "eight on a terminal strip with one lead to the stud",
      build: rings(8, "XJ1").change("XJ1", { method: "terminal-block" }).path("XJ1", "XE1"),
    },
    { name: "three and a stud beside it with three", build: rings(3).path("XE2", "XE1") },
    {
      name: "six, where the shop allows six",
      build: rings(6).rules({
        profile: "shop",
        shop: "Thistledown workshop",
        limits: [{ name: "ringsOnStud", value: 6 }],
      }),
    },
    { name: "five on the feed of a battery's box", build: rings(0).part("supply", "G1") },
  ],
  found: [
    {
      name: "five",
      build: rings(5),
      findings: [{ at: ["XE1"], says: "5 rings lie on XE1", fix: null }],
    },
    {
      name: "five on the battery's minus",
      build: rings(5, "G1.−"),
      findings: [{ at: ["G1.−"], says: "G1's minus post", fix: null }],
    },
    {
      name: "four, where the shop allows three",
      build: rings(4).rules({
        profile: "shop",
        shop: "Thistledown workshop",
        limits: [{ name: "ringsOnStud", value: 3 }],
      }),
      findings: [{ at: ["XE1"], severity: "tidy", says: "the limit of Thistledown workshop", fix: null }],
    },
  ],
});
