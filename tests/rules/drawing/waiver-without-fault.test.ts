import type { Waiver } from "../../../src/graph/harness.ts";
import rule from "../../../src/rules/rules/drawing/waiver-without-fault.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const spare = () => build().vehicle("X1", { "1": "illumination GY spare", "2": "mute BN spare" });
const waiver = (known: Partial<Waiver>): Waiver => ({
  id: "v:1" as Waiver["id"],
  covers: "finding",
  rule: "spare-not-capped",
  about: [{ part: "p:X1" as never, contact: 1 }],
  reason: "Caps are on order",
  by: "",
  date: "",
  ...known,
});

testRule(rule, {
  silent: [
    { name: "nothing is waived", build: spare() },
    { name: "the finding is still there", build: spare().waive(waiver({})) },
    {
      name: "a rule that still finds something",
      build: spare().waive(waiver({ covers: "rule", about: [] })),
    },
    {
      name: "a group that still finds something",
      build: spare().waive(waiver({ covers: "group", rule: "spares", about: [] })),
    },
    {
      name: "all that a rule finds has been taken up one by one",
      build: spare()
        .waive(waiver({ covers: "rule", about: [] }))
        .waive(waiver({ id: "v:2" as Waiver["id"] }))
        .waive(waiver({ id: "v:3" as Waiver["id"], about: [{ part: "p:X1" as never, contact: 2 }] })),
    },
  ],
  found: [
    {
      name: "the spare has been capped",
      build: spare().wire("X1.1", "XC1").waive(waiver({})),
      findings: [
        {
          at: ["X1.1"],
          says: "a finding of spare-not-capped (“Caps are on order”)",
          fix: "Withdraw the waiver of a finding of spare-not-capped (“Caps are on order”)",
        },
      ],
    },
    {
      name: "what it was about has gone: it stands at another part",
      build: spare().waive(waiver({ about: [{ part: "p:X9" as never, contact: 1 }] })),
      findings: [
        { at: ["X1"], fix: "Withdraw the waiver of a finding of spare-not-capped (“Caps are on order”)" },
      ],
    },
    {
      name: "a group in which nothing is found",
      build: spare().waive(waiver({ covers: "group", rule: "camera", about: [], reason: "No camera yet" })),
      findings: [
        {
          at: ["X1"],
          says: "the group Cameras",
          fix: "Withdraw the waiver of the group Cameras (“No camera yet”)",
        },
      ],
    },
  ],
});
