import type { Rule } from "../../rule.ts";
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

/** The rules of this group, in the order in which a page lists them. */
export const rules: readonly Rule[] = [
  noFuse,
  fuseTooFar,
  fuseBiggerThanWire,
  branchThinnerThanFuse,
  wireOverloaded,
  fuseTooSmall,
  fusesInParallel,
  fuseInNegative,
  negativeToPostUnfused,
  liveStudBare,
  dropTooGreat,
  wireSizeUnknown,
  solidWire,
  wireTooSmallToHandle,
];
