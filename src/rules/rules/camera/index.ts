import type { Rule } from "../../rule.ts";
import cameraAlwaysPowered from "./camera-always-powered.ts";
import cameraGroundApartFromDisplay from "./camera-ground-apart-from-display.ts";
import cameraOnPulsedFeed from "./camera-on-pulsed-feed.ts";
import cameraOptionsUnset from "./camera-options-unset.ts";
import cameraStarved from "./camera-starved.ts";
import videoStandardsDiffer from "./video-standards-differ.ts";

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  cameraOnPulsedFeed,
  cameraAlwaysPowered,
  cameraOptionsUnset,
  videoStandardsDiffer,
  cameraStarved,
  cameraGroundApartFromDisplay,
];
