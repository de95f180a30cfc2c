import type { Examples } from "../example.ts";
import branchThinnerThanFuse from "./branch-thinner-than-fuse.ts";
import fuseBiggerThanWire from "./fuse-bigger-than-wire.ts";
import fuseInNegative from "./fuse-in-negative.ts";
import fuseTooFar from "./fuse-too-far.ts";
import fusesInParallel from "./fuses-in-parallel.ts";
import liveStudBare from "./live-stud-bare.ts";
import negativeToPostUnfused from "./negative-to-post-unfused.ts";
import noFuse from "./no-fuse.ts";
import solidWire from "./solid-wire.ts";
import wireSizeUnknown from "./wire-size-unknown.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "no-fuse": noFuse,
  "fuse-too-far": fuseTooFar,
  "fuse-bigger-than-wire": fuseBiggerThanWire,
  "branch-thinner-than-fuse": branchThinnerThanFuse,
  "fuses-in-parallel": fusesInParallel,
  "fuse-in-negative": fuseInNegative,
  "negative-to-post-unfused": negativeToPostUnfused,
  "live-stud-bare": liveStudBare,
  "wire-size-unknown": wireSizeUnknown,
  "solid-wire": solidWire,
};
