import rule from "../../../src/rules/rules/drawing/duplicate-label.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const two = (first: string, second: string) =>
  build()
    .vehicle("X1", { "1": "mute", "2": "illumination" })
    .unit("X2", { "1": "mute", "2": "illumination" })
    .wire("X1.1", "X2.1", null, { label: first })
    .wire("X1.2", "X2.2", null, { label: second });

testRule(rule, {
  silent: [
    { name: "each its own", build: two("mute", "dimmer") },
    { name: "no labels", build: two("", "") },
    {
      name: "two stretches of one circuit",
      build: build()
        .vehicle("X1", { "1": "mute" })
        .unit("X2", { "1": "mute" })
        .wire("X1.1", "XJ1", null, { label: "mute" })
        .wire("XJ1", "X2.1", null, { label: "mute" }),
    },
    { name: "a label that says its own designation", build: two("W1", "W2") },
  ],
  found: [
    {
      name: "two circuits under one label",
      build: two("radio", "radio"),
      findings: [{ at: ["W1", "W2"], says: "are all labelled “radio”", fix: null }],
    },
    {
      name: "a label that is another's designation",
      build: two("W2", ""),
      findings: [{ at: ["W1", "W2"], says: "“W2”", fix: null }],
    },
  ],
});
