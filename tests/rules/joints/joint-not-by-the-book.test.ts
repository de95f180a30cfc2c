import { lamp, SEALED } from "../../../src/rules/examples/joints/lamp.ts";
import rule from "../../../src/rules/rules/joints/joint-not-by-the-book.ts";
import { testRule } from "../test-rule.ts";

const crimped = { method: "crimped-butt", cover: "adhesive-sleeve" } as const;

testRule(rule, {
  silent: [
    { name: "a crimp where both are allowed", build: lamp(crimped) },
    { name: "solder where both are allowed", build: lamp(SEALED) },
    { name: "a crimp aboard a boat", build: lamp(crimped).rules({ profile: "boat" }) },
    { name: "solder where solder is asked for", build: lamp(SEALED).rules({ joints: "solder-only" }) },
    {
      name: "bullets where solder is asked for",
      build: lamp({ method: "bullet-pair" }).rules({ joints: "solder-only" }),
    },
  ],
  found: [
    {
      name: "a crimp where solder is asked for",
      build: lamp(crimped).rules({ joints: "solder-only", shop: "Thistledown workshop" }),
      findings: [{ at: ["XJ1"], says: "are to be soldered (the limit of Thistledown workshop)", fix: null }],
    },
    {
      name: "solder aboard a boat",
      build: lamp(SEALED).rules({ profile: "boat" }),
      findings: [{ at: ["XJ1"], says: "ABYC E-11", fix: null }],
    },
  ],
});
