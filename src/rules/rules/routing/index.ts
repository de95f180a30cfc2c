import type { Rule } from "../../rule.ts";
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

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  drilledBlind,
  holeWithoutGrommet,
  loomNearMovingParts,
  loomNearHeat,
  loomNearIgnition,
  loomUnderTrimScrews,
  loomBendsAcrossHinge,
  loomUnsupported,
  noDripLoop,
  bendTooTight,
  insulationTooCoolForEngineBay,
  wireShorterThanItsRuns,
  wireMuchLongerThanItsRuns,
  pairLengthsDiffer,
  feedAndGroundApart,
  loomTapedAllRound,
];
