import rule from "../../../src/rules/rules/routing/feed-and-ground-apart.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

/** A unit whose feed and ground follow the runs that are named; each is 3 m long unless told. */
const unit = (
  feed: readonly string[],
  back: readonly string[],
  lengths: Readonly<Record<string, number>> = {},
) => {
  const built = build()
    .vehicle("X1", { "1": "constant-feed RD fuse:15", "2": "ground BN" })
    .module("A1", { rows: { "+": "constant-feed RD 2A", "−": "ground BN" } })
    .wire("X1.1", "A1.+")
    .wire("A1.−", "X1.2");
  for (const run of ["B1", "B2", "B3"])
    built.run(run, { length_m: lengths[run] ?? 3 }, [
      ...(feed.includes(run) ? ["W1"] : []),
      ...(back.includes(run) ? ["W2"] : []),
    ]);
  return built;
};

testRule(rule, {
  silent: [
    { name: "side by side", build: unit(["B1"], ["B1"]) },
    { name: "a ground to the nearest stud", build: unit(["B1"], ["B2"], { B2: 0.4 }) },
    { name: "apart for 1 m exactly", build: unit(["B1", "B2"], ["B1", "B3"], { B2: 1, B3: 2 }) },
    { name: "nobody has said where the ground lies", build: unit(["B1"], []) },
    {
      name: "a second ground that goes with the feed",
      build: build()
        .vehicle("X1", { "1": "constant-feed fuse:15", "2": "ground", "3": "ground" })
        .module("A1", { rows: { "+": "constant-feed", "−": "ground", "−2": "ground" } })
        .wire("X1.1", "A1.+")
        .wire("A1.−", "X1.2")
        .wire("A1.−2", "X1.3")
        .run("B1", { length_m: 3 }, ["W1", "W3"])
        .run("B2", { length_m: 3 }, ["W2"]),
    },
    {
      name: "a lamp",
      build: build()
        .vehicle("X1", { "1": "illumination fuse:5", "2": "ground" })
        .part("load", "E1", { function: "illumination" })
        .wire("X1.1", "E1.+")
        .wire("E1.−", "X1.2")
        .run("B1", { length_m: 3 }, ["W1"])
        .run("B2", { length_m: 3 }, ["W2"]),
    },
  ],
  found: [
    {
      name: "in two runs",
      build: unit(["B1"], ["B2"]),
      findings: [{ at: ["A1.+", "A1.−"], says: "they are apart for 3 m, and 1 m is the most", fix: null }],
    },
    {
      name: "for the last stretch",
      build: unit(["B1", "B2"], ["B1", "B3"], { B2: 1.5 }),
      findings: [{ at: ["A1.+", "A1.−"], says: "1.5 m", fix: null }],
    },
    {
      name: "by way of a fuse and a joint",
      build: build()
        .vehicle("X1", { "1": "constant-feed no-fuse", "2": "ground" })
        .unit("X2", { "1": "constant-feed", "2": "ground" })
        .path("X1.1", "F1", "XJ1", "X2.1")
        .path("X2.2", "XJ2", "X1.2")
        .run("B1", { length_m: 2 }, ["W1"])
        .run("B2", { length_m: 2 }, ["W5"]),
      findings: [{ at: ["X2.1", "X2.2"], fix: null }],
    },
    {
      name: "where the shop asks for less",
      build: unit(["B1"], ["B2"], { B2: 0.4 }).rules({ limits: [{ name: "feedsApart_m", value: 0.3 }] }),
      findings: [{ at: ["A1.+", "A1.−"], fix: null }],
    },
  ],
});
