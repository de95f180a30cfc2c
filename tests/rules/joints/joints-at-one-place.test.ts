import rule from "../../../src/rules/rules/joints/joints-at-one-place.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const LEADS = ["front-left-plus", "front-left-minus", "front-right-plus", "front-right-minus"];
/** Speaker leads of one plug, each joined so many metres from it, all in one run of 1.5 m. */
const joined = (places: readonly (number | "unknown")[], run_m: number | "unknown" = 1.5) => {
  const row = (side: string) =>
    Object.fromEntries(places.map((_, index) => [String(index + 1), `speaker-${LEADS[index]} ${side}`]));
  const built = build().vehicle("X1", row("takes")).unit("X2", row("gives"));
  const wires: string[] = [];
  for (const [index, length_m] of places.entries()) {
    const joint = `XJ${index + 1}`;
    built
      .wire(`X1.${index + 1}`, joint, null, { length_m })
      .wire(joint, `X2.${index + 1}`, null, { length_m: 0.8 });
    wires.push(`W${2 * index + 1}`, `W${2 * index + 2}`);
  }
  return built.run("B1", { length_m: run_m }, wires);
};

testRule(rule, {
  silent: [
    { name: "exactly 50 mm apart", build: joined([0.5, 0.55]) },
    { name: "well apart", build: joined([0.3, 0.5, 0.7]) },
    {
      name: "apart as measured from the other plug",
      build: joined([0.5, 0.5], 1.5).change("W4", { length_m: 0.9 }),
    },
    {
      name: "lengths that nobody has said",
      build: joined(["unknown", "unknown"]).change("W4", { length_m: "unknown" }),
    },
    { name: "an adapter too short to stagger them", build: joined([0.1, 0.1, 0.1, 0.1], 0.2) },
    { name: "one joint", build: joined([0.5]) },
    {
      name: "in different runs",
      build: joined([0.5])
        .vehicle("X5", { "1": "mute" })
        .unit("X6", { "1": "mute" })
        .wire("X5.1", "XJ9", null, { length_m: 0.5 })
        .wire("XJ9", "X6.1", null, { length_m: 1 })
        .run("B2", {}, ["W3", "W4"]),
    },
  ],
  found: [
    {
      name: "side by side",
      build: joined([0.5, 0.5]),
      findings: [
        { at: ["XJ1", "XJ2"], says: "XJ1 and XJ2 lie side by side in B1, 500 mm from X1", fix: null },
      ],
    },
    {
      name: "40 mm apart",
      build: joined([0.5, 0.54]),
      findings: [{ at: ["XJ1", "XJ2"], says: "between 500 and 540 mm", fix: null }],
    },
    {
      name: "two lumps",
      build: joined([0.3, 0.31, 0.7, 0.72]),
      findings: [
        { at: ["XJ1", "XJ2"], fix: null },
        { at: ["XJ3", "XJ4"], fix: null },
      ],
    },
    {
      name: "a run whose length nobody has said",
      build: joined([0.5, 0.5], "unknown"),
      findings: [{ at: ["XJ1", "XJ2"], fix: null }],
    },
  ],
});
