import { build } from "../build.ts";
import { defineExample } from "../example.ts";

const capped = () => build().vehicle("X1", { "1": "illumination GY spare" }).wire("X1.1", "XC1", "GY");

export default defineExample({
  page: [
    "A waiver says why a finding may stand as it is. When the finding has gone, because the fault was mended or what it was about was taken out, the waiver covers nothing.",
    "Left in the file it would hide the same fault when it comes back, with a reason that was written for something else.",
  ],
  trips: () =>
    capped().waive({
      id: "v:1" as never,
      covers: "finding",
      rule: "spare-not-capped",
      about: [{ part: "p:X1" as never, contact: 1 }],
      reason: "The cap is on order",
      by: "workshop",
      date: "2026-03-02",
    }),
  quiet: capped,
  quietBecause: "The spare is capped and nobody has waived anything.",
});
