import type { Examples } from "../example.ts";
import cameraAlwaysPowered from "./camera-always-powered.ts";
import cameraGroundApartFromDisplay from "./camera-ground-apart-from-display.ts";
import cameraOnPulsedFeed from "./camera-on-pulsed-feed.ts";
import cameraOptionsUnset from "./camera-options-unset.ts";
import cameraStarved from "./camera-starved.ts";
import videoStandardsDiffer from "./video-standards-differ.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "camera-on-pulsed-feed": cameraOnPulsedFeed,
  "camera-always-powered": cameraAlwaysPowered,
  "camera-options-unset": cameraOptionsUnset,
  "video-standards-differ": videoStandardsDiffer,
  "camera-starved": cameraStarved,
  "camera-ground-apart-from-display": cameraGroundApartFromDisplay,
};
