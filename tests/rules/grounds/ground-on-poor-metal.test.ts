import type { Ground } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/grounds/ground-on-poor-metal.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const on = (surface: Ground["surface"], known: Partial<Ground> = {}) =>
  build()
    .part("ground", "XE1", { surface, ...known })
    .unit("X2", { "3": "ground BK" })
    .wire("X2.3", "XE1");

testRule(rule, {
  silent: [
    { name: "bare metal", build: on("bare-metal") },
    { name: "nobody has said", build: on("unknown") },
    {
      name: "a door that is strapped to the body",
      build: on("moving-part").part("ground", "XE2", { surface: "bare-metal" }).wire("XE1", "XE2"),
    },
    { name: "the battery's own post", build: on("painted", { serves: "battery-post" }) },
    { name: "paint, where nothing lands", build: build().part("ground", "XE1", { surface: "painted" }) },
    {
      name: "trim, with the unit's second ground on the vehicle's lead in one circuit",
      build: on("trim").vehicle("X1", { "1": "ground BN" }).wire("X2.3", "X1.1"),
    },
  ],
  found: [
    { name: "paint", build: on("painted"), findings: [{ at: ["XE1"], says: "lies on paint", fix: null }] },
    { name: "trim", build: on("trim"), findings: [{ at: ["XE1"], fix: null }] },
    {
      name: "a seat-belt bolt",
      build: on("seat-belt-bolt"),
      findings: [{ at: ["XE1"], says: "seat-belt bolt", fix: null }],
    },
    {
      name: "a tailgate strapped to a door, for a lamp through a joint",
      build: build()
        .part("ground", "XE1", { surface: "moving-part" })
        .part("ground", "XE2", { surface: "moving-part" })
        .part("load", "E1", { type: "lamp" })
        .path("E1.−", "XJ1", "XE1")
        .wire("XE1", "XE2"),
      findings: [
        { at: ["XE1"], fix: null },
        { at: ["XE2"], fix: null },
      ],
    },
  ],
});
