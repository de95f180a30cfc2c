import type { Module } from "../../../graph/harness.ts";
import { type Build, build } from "../build.ts";

/** Contacts 1 to 4: plus and minus of the front left channel, then of another. */
export function receiver(
  outputs: Module["outputs"] = "bridged",
  other: "front-right" | "rear-left" = "front-right",
): Build {
  return build().module("A1", {
    name: "radio receiver",
    role: "receiver",
    outputs,
    rows: {
      "1": "speaker-front-left-plus WH",
      "2": "speaker-front-left-minus WH/BK",
      "3": `speaker-${other}-plus GY`,
      "4": `speaker-${other}-minus GY/BK`,
    },
  });
}

/** The same with a speaker for each channel, P1 and P2, of which no lead is joined yet. */
export function withSpeakers(...given: Parameters<typeof receiver>): Build {
  return receiver(...given)
    .part("speaker", "P1", { position: "front-left", impedance_ohm: 4 })
    .part("speaker", "P2", { position: given[1] ?? "front-right", impedance_ohm: 4 });
}
