import type { Examples } from "../example.ts";
import bendTooTight from "./bend-too-tight.ts";
import drilledBlind from "./drilled-blind.ts";
import feedAndGroundApart from "./feed-and-ground-apart.ts";
import holeWithoutGrommet from "./hole-without-grommet.ts";
import insulationTooCoolForEngineBay from "./insulation-too-cool-for-engine-bay.ts";
import loomBendsAcrossHinge from "./loom-bends-across-hinge.ts";
import loomNearHeat from "./loom-near-heat.ts";
import loomNearIgnition from "./loom-near-ignition.ts";
import loomNearMovingParts from "./loom-near-moving-parts.ts";
import loomTapedAllRound from "./loom-taped-all-round.ts";
import loomUnderTrimScrews from "./loom-under-trim-screws.ts";
import loomUnsupported from "./loom-unsupported.ts";
import noDripLoop from "./no-drip-loop.ts";
import pairLengthsDiffer from "./pair-lengths-differ.ts";
import wireMuchLongerThanItsRuns from "./wire-much-longer-than-its-runs.ts";
import wireShorterThanItsRuns from "./wire-shorter-than-its-runs.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "bend-too-tight": bendTooTight,
  "drilled-blind": drilledBlind,
  "feed-and-ground-apart": feedAndGroundApart,
  "hole-without-grommet": holeWithoutGrommet,
  "insulation-too-cool-for-engine-bay": insulationTooCoolForEngineBay,
  "loom-bends-across-hinge": loomBendsAcrossHinge,
  "loom-near-heat": loomNearHeat,
  "loom-near-ignition": loomNearIgnition,
  "loom-near-moving-parts": loomNearMovingParts,
  "loom-taped-all-round": loomTapedAllRound,
  "loom-under-trim-screws": loomUnderTrimScrews,
  "loom-unsupported": loomUnsupported,
  "no-drip-loop": noDripLoop,
  "pair-lengths-differ": pairLengthsDiffer,
  "wire-much-longer-than-its-runs": wireMuchLongerThanItsRuns,
  "wire-shorter-than-its-runs": wireShorterThanItsRuns,
};
