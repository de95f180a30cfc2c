import rule from "../../../src/rules/rules/data/configuration-switch-wrong.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Switches = NonNullable<Parameters<ReturnType<typeof build>["module"]>[1]>["switches"];
const module = (...switches: NonNullable<Switches>) => build().module("A1", { role: "interface", switches });
const one = (
  position: NonNullable<Switches>[number]["position"],
  wanted: NonNullable<Switches>[number]["wanted"],
  label = "1",
) => ({ label, position, wanted, meaning: "" });

testRule(rule, {
  silent: [
    { name: "as wanted", build: module(one("on", "on"), one("off", "off", "2")) },
    { name: "either will do", build: module(one("on", "either")) },
    { name: "nobody has looked what is wanted", build: module(one("on", "unknown")) },
    { name: "not set: another rule", build: module(one("unset", "on")) },
  ],
  found: [
    {
      name: "one stands off",
      build: module(one("off", "on"), one("on", "on", "2")),
      findings: [{ at: ["A1"], says: "switch 1 stands off", fix: "Set switch 1 of A1 to on" }],
    },
    {
      name: "two are wrong, one of them keeps unset ones as they are",
      build: module(one("off", "on"), one("on", "off", "2"), one("unset", "either", "3")),
      findings: [{ at: ["A1"], says: "switch 2 stands on", fix: "Set 2 switches of A1 as wanted" }],
    },
  ],
});
