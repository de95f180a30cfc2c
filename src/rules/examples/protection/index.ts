import type { Examples } from "../example.ts";
import branchThinnerThanFuse from "./branch-thinner-than-fuse.ts";
import dropTooGreat from "./drop-too-great.ts";
import fuseBiggerThanWire from "./fuse-bigger-than-wire.ts";
import fuseInNegative from "./fuse-in-negative.ts";
import fuseTooFar from "./fuse-too-far.ts";
import fuseTooSmall from "./fuse-too-small.ts";
import fusesInParallel from "./fuses-in-parallel.ts";
import liveStudBare from "./live-stud-bare.ts";
import negativeToPostUnfused from "./negative-to-post-unfused.ts";
import noFuse from "./no-fuse.ts";
import solidWire from "./solid-wire.ts";
import wireOverloaded from "./wire-overloaded.ts";
import wireSizeUnknown from "./wire-size-unknown.ts";
import wireTooSmallToHandle from "./wire-too-small-to-handle.ts";

/** The examples of this group by the name of their rule. */
export const examples: Examples = {
  "no-fuse": noFuse,
  "fuse-too-far": fuseTooFar,
  "fuse-bigger-than-wire": fuseBiggerThanWire,
  "branch-thinner-than-fuse": branchThinnerThanFuse,
  "wire-overloaded": wireOverloaded,
  "fuse-too-small": fuseTooSmall,
  "fuses-in-parallel": fusesInParallel,
  "fuse-in-negative": fuseInNegative,
  "negative-to-post-unfused": negativeToPostUnfused,
  "live-stud-bare": liveStudBare,
  "drop-too-great": dropTooGreat,
  "wire-size-unknown": wireSizeUnknown,
  "solid-wire": solidWire,
  "wire-too-small-to-handle": wireTooSmallToHandle,
};
