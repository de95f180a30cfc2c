import rule from "../../../src/rules/rules/spares/unlabelled-spare.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const spare = (row: string) => build().vehicle("X1", { "7": row }).wire("X1.7", "XC1", "PK");

testRule(rule, {
  silent: [
    { name: "its function says what it was for", build: spare("mute PK spare") },
    {
      name: "a label stands on the lead",
      build: spare("unknown PK spare").change("W1", { label: "tested dead" }),
    },
    {
      name: "a note says it",
      build: spare("unknown PK spare").change("XC1", { note: "from the old radio" }),
    },
    { name: "an empty cap", build: build().part("cap", "XC1") },
    {
      name: "several leads under one cap are another rule's",
      build: spare("unknown PK").vehicle("X2", { "1": "unknown" }).wire("X2.1", "XC1"),
    },
  ],
  found: [
    {
      name: "neither function nor label",
      build: spare("unknown PK spare"),
      findings: [{ at: ["XC1", "W1"], says: "X1.7 (pink) under XC1", fix: null }],
    },
    {
      name: "of the equipment's side too",
      build: build().unit("X2", { "1": "unknown GY" }).wire("X2.1", "XC4", "GY"),
      findings: [{ at: ["XC4", "W1"], fix: null }],
    },
  ],
});
