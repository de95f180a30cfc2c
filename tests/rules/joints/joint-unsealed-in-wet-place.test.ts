import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/joint-unsealed-in-wet-place.ts";
import { testRule } from "../test-rule.ts";

const sleeved = { method: "solder-and-sleeve", cover: "sleeve" } as const;
const FIX = "Cover XJ1 with an adhesive-lined sleeve";

testRule(rule, {
  silent: [
    { name: "adhesive sleeve outside", build: lamp({ ...SEALED, zone: "outside" }) },
    { name: "a plain sleeve inside", build: lamp({ ...sleeved, zone: "cabin" }) },
    { name: "nobody has said where", build: lamp(sleeved) },
    { name: "nobody has said what covers it", build: lamp({ zone: "outside" }) },
    {
      name: "a housing, which may be sealed",
      build: lamp({ method: "terminal-block", cover: "housing", zone: "door" }),
    },
    { name: "one lead alone goes on outside", build: lamp(sleeved).run("B1", { zone: "outside" }, ["W2"]) },
    {
      name: "where a wet run ends and a dry one begins",
      build: lamp(sleeved)
        .run("B1", { zone: "cabin" }, ["W1", "W2"])
        .run("B2", { zone: "outside" }, ["W1", "W2"]),
    },
    {
      name: "its zone says cabin, whatever its runs",
      build: lamp({ ...sleeved, zone: "cabin" }).run("B1", { zone: "outside" }, ["W1", "W2"]),
    },
  ],
  found: [
    {
      name: "outside by its zone",
      build: lamp({ ...sleeved, zone: "outside" }),
      findings: [{ at: ["XJ1"], says: "lies outside with a sleeve that has no adhesive", fix: FIX }],
    },
    {
      name: "in the engine bay by its runs",
      build: lamp(sleeved).run("B1", { zone: "engine-bay" }, ["W1", "W2"]),
      findings: [{ at: ["XJ1"], says: "in the engine bay", fix: FIX }],
    },
    {
      name: "in a door, one wire going on",
      build: lamp(sleeved).run("B1", { zone: "cabin" }, ["W1"]).run("B2", { zone: "door" }, ["W1", "W2"]),
      findings: [{ at: ["XJ1"], says: "in a door", fix: FIX }],
    },
    {
      name: "tape, in a door",
      build: lamp({ method: "crimped-butt", cover: "tape", zone: "door" }),
      findings: [{ at: ["XJ1"], fix: FIX }],
    },
    {
      name: "cloth tape over tape, outside",
      build: lamp({ method: "solder-and-sleeve", cover: "cloth-over-tape", zone: "outside" }),
      findings: [{ at: ["XJ1"], fix: FIX }],
    },
    {
      name: "bullets with nothing over them",
      build: lamp({ method: "bullet-pair", cover: "none", zone: "outside" }),
      findings: [{ at: ["XJ1"], fix: null }],
    },
  ],
});
