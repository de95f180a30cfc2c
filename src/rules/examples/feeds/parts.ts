import { type Build, build } from "../build.ts";

/** The radio bay of a van and a receiver for it; nothing is joined yet. */
export function radioBay(): Build {
  return build()
    .vehicle("X1", {
      "1": "constant-feed RD 1.5 fuse:15",
      "2": "switched-feed YE 0.75 fuse:10",
      "3": "ground BN 1.5",
    })
    .module("A1", { role: "receiver", name: "radio receiver" })
    .receptacle("X2", "A1", {
      "1": "constant-feed YE 1.5 3A",
      "2": "switched-feed RD 0.75 0.1A",
      "3": "ground BK 1.5",
    });
}

/** A battery with its negative lead on the frame. */
export function battery(): Build {
  return build().part("supply", "G1", { cover: "boot" }).path("G1.−", "XE1");
}

export const WORK_LAMP = { type: "lamp", current_A: 4, function: "work-lamp" } as const;
