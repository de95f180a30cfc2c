import rule from "../../../src/rules/rules/spares/unused-line-plug-uncovered.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

const rows = { hot: "line-rear-left-signal", shell: "line-rear-left-shield" };
const plug = (cover: "none" | "contact-only" | "whole") =>
  build().unit("X7", rows, { form: "line-plug", cover });

testRule(rule, {
  silent: [
    { name: "covered, shell and all", build: plug("whole") },
    { name: "plugged in", build: plug("none").unit("X8", rows, { form: "line-plug" }).mate("X7", "X8") },
    {
      name: "joined to an amplifier's input",
      build: plug("none")
        .module("A1", { rows: { "1": "line-rear-left-signal takes", "2": "line-rear-left-shield takes" } })
        .wire("X7.hot", "A1.1")
        .wire("X7.shell", "A1.2"),
    },
    { name: "a housing that is no line plug", build: build().unit("X7", rows) },
    {
      name: "a plug that carries a feed",
      build: build().unit("X7", { "1": "constant-feed" }, { form: "line-plug" }),
    },
  ],
  found: [
    {
      name: "on a tail of its own receiver",
      build: build()
        .module("A2", { role: "receiver" })
        .receptacle("X6", "A2", { "1": "line-rear-left-signal gives", "2": "line-rear-left-shield gives" })
        .receptacle("X7", "A2", rows, { form: "line-plug" })
        .wire("X6.1", "X7.hot")
        .wire("X6.2", "X7.shell"),
      findings: [{ at: ["X7"], fix: "Cover X7, shell and all" }],
    },
    {
      name: "its shell on the frame and its middle on nothing",
      build: plug("none").wire("X7.shell", "XE1"),
      findings: [{ at: ["X7"], fix: "Cover X7, shell and all" }],
    },
    {
      name: "bare",
      build: plug("none"),
      findings: [{ at: ["X7"], says: "nothing covers it", fix: "Cover X7, shell and all" }],
    },
    {
      name: "its middle contact covered, its shell bare",
      build: plug("contact-only"),
      findings: [{ at: ["X7"], says: "the shell is bare", fix: "Cover X7, shell and all" }],
    },
    {
      name: "a video plug",
      build: build().unit("X7", { hot: "video-signal", shell: "video-shield" }, { form: "line-plug" }),
      findings: [{ at: ["X7"], fix: "Cover X7, shell and all" }],
    },
  ],
});
