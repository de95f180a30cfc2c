import rule from "../../../src/rules/rules/data/same-shell-mated-wrongly.ts";
import { type Build, build, type Rows } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const two = (a: Rows, b: Rows, known: Parameters<Build["receptacle"]>[3] = {}) =>
  build()
    .module("A1")
    .receptacle("X1", "A1", a, { shell: "micro 4", gender: "receptacle" })
    .receptacle("X2", "A1", b, { shell: "micro 4", gender: "receptacle", ...known });
const feed = { "1": "constant-feed", "2": "ground" };
const keys = { "1": "steering-key-1", "2": "steering-key-2" };
const lights = { "1": "illumination", "2": "reverse" };

testRule(rule, {
  silent: [
    { name: "the same functions in both", build: two(feed, feed) },
    { name: "a key sets them apart", build: two(feed, keys, { keying: "B" }) },
    { name: "the other sex", build: two(feed, keys, { gender: "plug" }) },
    { name: "another shell", build: two(feed, keys, { shell: "micro 6" }) },
    { name: "nobody has stated the shells", build: two(feed, keys, { shell: null }) },
    { name: "cavities that one of them leaves empty", build: two(feed, { "1": "unknown", "2": "ground" }) },
    {
      name: "line plugs are all alike and mean no harm",
      build: build()
        .unit("X1", { hot: "line-rear-left-signal" }, { form: "line-plug", shell: "line" })
        .unit("X2", { hot: "line-rear-right-signal" }, { form: "line-plug", shell: "line" }),
    },
  ],
  found: [
    {
      name: "one shell, written in two ways",
      build: two(feed, keys, { shell: "Micro  4 " }),
      findings: [{ at: ["X1", "X2"], severity: "danger", fix: null }],
    },
    {
      name: "a feed meets a ground",
      build: two({ "1": "constant-feed" }, { "1": "ground" }),
      findings: [
        { at: ["X1", "X2"], severity: "danger", says: "X1 has constant feed and X2 has ground", fix: null },
      ],
    },
    {
      name: "a feed meets a signal",
      build: two(feed, keys),
      findings: [
        {
          at: ["X1", "X2"],
          severity: "danger",
          says: "In cavity 1, X1 has constant feed and X2 has steering-wheel keys 1",
          fix: null,
        },
      ],
    },
    {
      name: "two signals change places",
      build: two(keys, lights),
      findings: [{ at: ["X1", "X2"], fix: null }],
    },
    {
      name: "a feed meets ground",
      build: two({ "1": "constant-feed" }, { "1": "ground" }),
      findings: [{ at: ["X1", "X2"], severity: "danger", fix: null }],
    },
    {
      name: "three of one shell are told once",
      build: two(keys, lights).receptacle("X10", "A1", keys, { shell: "micro 4", gender: "receptacle" }),
      findings: [{ at: ["X1", "X2", "X10"], says: "X1, X2 and X10", fix: null }],
    },
  ],
});
