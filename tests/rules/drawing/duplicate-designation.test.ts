import type { PartId, WireId } from "../../../src/graph/harness.ts";
import { makePart, makeWire } from "../../../src/graph/make.ts";
import rule from "../../../src/rules/rules/drawing/duplicate-designation.ts";
import { Build, build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

function twoParts(): Build {
  const { harness } = build().part("ground", "XE1");
  const twin = makePart("ground", "p:twin" as PartId, "XE1");
  return new Build({ ...harness, parts: { ...harness.parts, [twin.id]: twin } });
}

function twoWires(): Build {
  const { harness } = build()
    .unit("X2", { "1": "mute", "2": "mute" })
    .path("X2.1", "XC1")
    .path("X2.2", "XC2");
  const [, second] = Object.values(harness.wires);
  const twin = makeWire("w:W2" as WireId, "W1", second!.ends);
  return new Build({ ...harness, wires: { ...harness.wires, [twin.id]: twin } });
}

testRule(rule, {
  silent: [
    { name: "every name once", build: joined() },
    { name: "a part and a wire may share a name", build: build().part("load", "W1").wire("loose", "W1.+") },
  ],
  found: [
    {
      name: "two parts",
      build: twoParts(),
      findings: [{ at: ["XE1", "XE1"], says: "Two parts are called XE1", fix: "Renumber the second XE1" }],
    },
    {
      name: "two wires",
      build: twoWires(),
      findings: [{ at: ["W1", "W1"], says: "Two wires are called W1", fix: "Renumber the second W1" }],
    },
  ],
});
