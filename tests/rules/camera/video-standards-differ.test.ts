import rule from "../../../src/rules/rules/camera/video-standards-differ.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Kind = "ntsc" | "pal" | "high-definition" | "several" | "none" | "unknown";
const boxes = (camera: Kind, display: Kind) =>
  build()
    .module("A1", {
      role: "camera",
      video: camera,
      rows: { "1": "video-signal gives YE", "2": "video-shield gives" },
    })
    .module("A2", { role: "display", video: display })
    .receptacle("X2", "A2", { "1": "video-signal takes YE", "2": "video-shield takes" });
const joined = (camera: Kind, display: Kind) =>
  boxes(camera, display).wire("A1.1", "X2.1").wire("A1.2", "X2.2");

testRule(rule, {
  silent: [
    { name: "the same kind", build: joined("ntsc", "ntsc") },
    { name: "a display that shows several", build: joined("high-definition", "several") },
    { name: "nothing known of one", build: joined("pal", "unknown") },
    { name: "not joined", build: boxes("pal", "ntsc") },
    {
      name: "a converter between",
      build: boxes("high-definition", "ntsc")
        .module("A3", {
          role: "interface",
          video: "several",
          rows: { "1": "video-signal takes", "2": "video-signal gives" },
        })
        .wire("A1.1", "A3.1")
        .wire("A3.2", "X2.1"),
    },
  ],
  found: [
    {
      name: "NTSC to PAL",
      build: joined("ntsc", "pal"),
      findings: [{ at: ["A1", "A2"], says: "A1 gives NTSC", fix: null }],
    },
    {
      name: "high definition into a receiver, through a mated plug",
      build: build()
        .module("A1", { role: "camera", video: "high-definition" })
        .receptacle("X1", "A1", { "1": "video-signal gives" })
        .module("A2", { role: "receiver", video: "ntsc" })
        .receptacle("X2", "A2", { "1": "video-signal takes" })
        .mate("X1", "X2"),
      findings: [{ at: ["A1", "A2"], says: "A2 shows NTSC only", fix: null }],
    },
    {
      name: "directions not told, through a joint",
      build: build()
        .module("A1", { role: "camera", video: "pal", rows: { "1": "video-signal unknown" } })
        .module("A2", { role: "display", video: "high-definition", rows: { "1": "video-signal unknown" } })
        .path("A1.1", "XJ1", "A2.1"),
      findings: [{ at: ["A1", "A2"], fix: null }],
    },
  ],
});
