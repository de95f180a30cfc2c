import { feed, lamp } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/joint-bare.ts";
import { testRule } from "../test-rule.ts";

const FIX = "Cover XJ1 with an adhesive-lined sleeve";

testRule(rule, {
  silent: [
    { name: "sleeved", build: lamp({ method: "solder-and-sleeve", cover: "sleeve" }) },
    { name: "a coloured barrel", build: lamp({ method: "crimped-butt", cover: "none", barrel: "red" }) },
    { name: "nobody has said what barrel", build: lamp({ method: "crimped-butt", cover: "none" }) },
    { name: "nobody has said what covers it", build: lamp({ method: "solder-and-sleeve" }) },
    { name: "bullets", build: lamp({ method: "bullet-pair", cover: "none" }) },
  ],
  found: [
    {
      name: "solder on a feed",
      build: feed({ method: "solder-and-sleeve", cover: "none" }),
      findings: [{ at: ["XJ1"], severity: "fault", says: "soldered joint", fix: FIX }],
    },
    {
      name: "a bare barrel",
      build: lamp({ method: "crimped-butt", cover: "none", barrel: "bare" }),
      findings: [{ at: ["XJ1"], severity: "fault", says: "crimp without insulation", fix: FIX }],
    },
    {
      name: "solder on a ground",
      build: lamp({ method: "solder-and-sleeve", cover: "sleeve" })
        .part("splice", "XJ2", { method: "solder-and-sleeve", cover: "none" })
        .vehicle("X3", { "1": "ground" })
        .path("X3.1", "XJ2", "XE1"),
      findings: [{ at: ["XJ2"], fix: "Cover XJ2 with an adhesive-lined sleeve" }],
    },
  ],
});
