import rule from "../../../src/rules/rules/spares/loose-lead.ts";
import { build } from "../../build.ts";
import { joined } from "../harnesses.ts";
import { testRule } from "../test-rule.ts";

const pulse = () => build().vehicle("X1", { "5": "speed GN" }).unit("X2", { "9": "speed PK" });

testRule(rule, {
  silent: [
    { name: "a joint that holds two ends", build: pulse().path("X1.5", "XJ1", "X2.9") },
    { name: "an adapter that is joined through", build: joined() },
    { name: "a lead that ends under a cap", build: pulse().path("X2.9", "XC1") },
    { name: "a cavity without a wire", build: pulse() },
    {
      name: "a spare with a loose end: that is told as a spare",
      build: build().unit("X2", { "9": "mute PK spare" }).wire("X2.9", "loose"),
    },
    {
      name: "a loose end that is live: the danger speaks instead",
      build: build().vehicle("X1", { A4: "constant-feed RD" }).wire("X1.A4", "loose"),
    },
  ],
  found: [
    {
      name: "a lead that ends in a joint by itself",
      build: pulse().path("X2.9", "XJ1"),
      findings: [{ at: ["W1"], says: "ends in XJ1, which holds nothing else", fix: null }],
    },
    {
      name: "a lead from a cavity",
      build: build().unit("X2", { "9": "mute PK" }).wire("X2.9", "loose"),
      findings: [{ at: ["W1"], says: "W1 (pink) from X2.9 mute ends loose", fix: null }],
    },
    {
      name: "a lead whose partner waits on the other chart",
      build: pulse().wire("X2.9", "loose"),
      findings: [{ at: ["W1"], says: "X1.5 vehicle speed (green) waits for it", fix: "Join X2.9 to X1.5" }],
    },
    {
      name: "a branch of a joint",
      build: pulse().path("X1.5", "XJ1", "X2.9").wire("XJ1", "loose"),
      findings: [{ at: ["W3"], says: "from XJ1 ends loose", fix: null }],
    },
    {
      name: "a length of wire with two loose ends is only untidy",
      build: build().wire("loose", "loose", "BU"),
      findings: [{ at: ["W1"], severity: "tidy", says: "W1 (blue)", fix: null }],
    },
  ],
});
