import rule from "../../../src/rules/rules/data/configuration-switch-unset.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Switch = NonNullable<NonNullable<Parameters<ReturnType<typeof build>["module"]>[1]>["switches"]>[number];
const module = (...switches: Switch[]) => build().module("A1", { role: "interface", switches });
const one = (position: Switch["position"], wanted: Switch["wanted"], label = "1"): Switch => ({
  label,
  position,
  wanted,
  meaning: "",
});

testRule(rule, {
  silent: [
    { name: "set", build: module(one("on", "on")) },
    { name: "a module without switches", build: build().module("A1") },
    { name: "either will do", build: module(one("unset", "either")) },
    { name: "set wrongly: another rule", build: module(one("off", "on")) },
  ],
  found: [
    {
      name: "wanted on",
      build: module(one("unset", "on"), one("on", "on", "2")),
      findings: [{ at: ["A1"], says: "switch 1 (wanted on) stands", fix: null }],
    },
    {
      name: "nobody has looked at all",
      build: module(one("unset", "unknown"), one("unset", "unknown", "2")),
      findings: [{ at: ["A1"], says: "switches 1 and 2 stand", fix: null }],
    },
  ],
});
