import type { LIMITS } from "../../graph/schema/rules.ts";

export type LimitName = (typeof LIMITS)[number];

/** A figure with the book that it is taken from, as a message names it. */
export type Limit = { readonly value: number; readonly book: string };

/** What a limit is about, for the form where a shop writes its own. */
export const LIMIT_WORDS: Readonly<Record<LimitName, { readonly words: string; readonly unit: string }>> = {
  fuseDistance_mm: { words: "From a source to its fuse, at most", unit: "mm" },
  fuseDistanceSheathed_mm: { words: "The same where the lead is sheathed all the way, at most", unit: "mm" },
  fuseShare_percent: { words: "A fuse's rating, of what its thinnest wire bears, at most", unit: "%" },
  fuseLoad_percent: { words: "Steady load, of a fuse's rating, at most", unit: "%" },
  groundDrop_V: { words: "Lost between a unit's ground and the battery, at most", unit: "V" },
  ringsOnStud: { words: "Ring terminals on one stud, at most", unit: "" },
  wiresInCrimp: { words: "Wires in one crimp, at most", unit: "" },
  jointsInLead: { words: "Joints in one lead, at most", unit: "" },
  turnOn_A: { words: "What a turn-on output gives where its chart is silent", unit: "A" },
  backFeed_V: { words: "On a lead that ought to be dead, at most", unit: "V" },
  support_mm: { words: "From clip to clip, at most", unit: "mm" },
  bendFactor: { words: "Bend radius, in diameters of the bundle, at least", unit: "×" },
  signalBesidePower_m: { words: "A signal lead beside a power lead, at most", unit: "m" },
  tapedInCabin_mm: { words: "Loom taped all round inside the cabin, at most", unit: "mm" },
  feedsApart_m: { words: "Feed and ground of one unit in different runs, at most", unit: "m" },
  untwisted_mm: { words: "A data pair without its twist, at most", unit: "mm" },
  smallestLead_mm2: { words: "A single power lead, at least", unit: "mm²" },
  airbagWait_min: {
    words: "Wait after the battery is off before airbag parts are near, at least",
    unit: "min",
  },
};
