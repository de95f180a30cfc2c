import type { Harness } from "../../../src/graph/harness.ts";
import { interfaceJob } from "./data.ts";
import { boardJob, lampJob } from "./power.ts";
import { cameraJob } from "./sight.ts";
import { amplifierJob, receiverJob } from "./sound.ts";
import { trailerJob } from "./trailer.ts";
import { Yard } from "./yard.ts";

/** The kinds of sound harness, and what makes one. */
export const KINDS: Readonly<Record<string, (seed: number) => Yard>> = {
  "receiver adapter": (seed) => only(seed, 12, receiverJob),
  amplifier: (seed) => only(seed, 12, amplifierJob),
  camera: (seed) => only(seed, seed % 3 === 0 ? 24 : 12, cameraJob),
  "interface module": (seed) => only(seed, 12, (yard) => interfaceJob(yard, seed % 2 === 0)),
  "trailer adapter": (seed) => only(seed, seed % 3 === 0 ? 24 : 12, (yard) => trailerJob(yard)),
  "work lamps": (seed) => only(seed, seed % 3 === 0 ? 24 : 12, lampJob),
  board: (seed) => only(seed, seed % 4 === 0 ? 24 : 12, (yard) => boardJob(yard, 5 + (seed % 20))),
  boat: (seed) =>
    only(seed, seed % 2 === 0 ? 24 : 12, (yard) => {
      yard.build.rules({ profile: "boat" });
      boardJob(yard, 4 + (seed % 12), { isolator: true, boat: true });
    }),
  "whole build": (seed) =>
    only(seed, 12, (yard) => {
      amplifierJob(yard);
      cameraJob(yard);
      boardJob(yard, 5 + (seed % 12));
      if (seed % 2) trailerJob(yard);
      else lampJob(yard);
    }),
};

function only(seed: number, volts: 12 | 24, make: (yard: Yard) => unknown): Yard {
  const yard = new Yard(seed, volts);
  make(yard);
  return yard;
}

export function cleanHarness(kind: string, seed: number): Harness {
  return KINDS[kind]!(seed).harness;
}
