import rule from "../../../src/rules/rules/camera/camera-options-unset.ts";
import { build } from "../../build.ts";
import { testRule } from "../test-rule.ts";

type Option = {
  label: string;
  position: "on" | "off" | "unset";
  wanted: "on" | "off" | "either" | "unknown";
  meaning: string;
};
const camera = (switches: readonly Option[], role: "camera" | "interface" = "camera") =>
  build().module("A1", { role, switches: [...switches] });
const mirror = (position: Option["position"], wanted: Option["wanted"]): Option => ({
  label: "white loop",
  position,
  wanted,
  meaning: "mirrored picture",
});

testRule(rule, {
  silent: [
    { name: "no options", build: camera([]) },
    { name: "set as wanted", build: camera([mirror("on", "on")]) },
    { name: "set, and nobody knows what is wanted", build: camera([mirror("off", "unknown")]) },
    { name: "either would do", build: camera([mirror("unset", "either")]) },
    { name: "another box: another rule's", build: camera([mirror("unset", "on")], "interface") },
  ],
  found: [
    {
      name: "not recorded",
      build: camera([mirror("unset", "unknown")]),
      findings: [{ at: ["A1"], says: "white loop (mirrored picture) is not recorded", fix: null }],
    },
    {
      name: "one not recorded, one the wrong way",
      build: camera([
        { ...mirror("unset", "off"), label: "green loop", meaning: "guide lines" },
        mirror("off", "on"),
      ]),
      findings: [{ at: ["A1"], severity: "fault", says: "is off and ought to be on", fix: null }],
    },
  ],
});
