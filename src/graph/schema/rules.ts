import * as z from "zod/mini";
import { filledLine, line, object } from "./values.ts";

/** Which books a harness is checked by; `shop`: the limits that its own workshop has written down. */
export const PROFILES = ["road-vehicle", "boat", "trailer", "shop"] as const;

/** Numbers on which the books disagree. The unit is in the name; a count has none. */
export const LIMITS = [
  "fuseDistance_mm",
  "fuseDistanceSheathed_mm",
  "fuseShare_percent",
  "fuseLoad_percent",
  "groundDrop_V",
  "ringsOnStud",
  "wiresInCrimp",
  "jointsInLead",
  "turnOn_A",
  "backFeed_V",
  "support_mm",
  "bendFactor",
  "signalBesidePower_m",
  "tapedInCabin_mm",
  "feedsApart_m",
  "untwisted_mm",
  "smallestLead_mm2",
  "airbagWait_min",
] as const;

const limit = object({ name: z.enum(LIMITS), value: z.number().check(z.nonnegative(), z.maximum(100000)) });

/** What a rule of a person's own looks at. */
export const OWN_RULE_THINGS = [
  "wire",
  "joint",
  "cap",
  "connector",
  "ground",
  "fuse",
  "relay",
  "run",
  "cable",
  "unit",
] as const;

const condition = object({
  /** Names a property of the thing, as the list of properties has it; an unheard-of one is reported. */
  property: z.string().check(z.regex(/^[a-z][a-z-]{0,63}$/)),
  is: z.enum(["one-of", "none-of", "at-least", "at-most", "given", "not-given"]),
  values: z.array(line).check(z.maxLength(60)),
});

/** "Every joint outside is sealed": each thing for which all of `where` holds must have all of `must`. */
export const ownRule = object({
  id: z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,63}$/)),
  /** What is so in a sound harness, in the shop's own words. */
  words: filledLine,
  severity: z.enum(["danger", "fault", "weak", "tidy"]),
  of: z.enum(OWN_RULE_THINGS),
  where: z.array(condition).check(z.maxLength(20)),
  must: z.array(condition).check(z.minLength(1), z.maxLength(20)),
});

export const rules = object({
  profile: z.enum(PROFILES),
  /** Whose own limits and rules these are. */
  shop: line,
  /** A fuse in the negative lead: never; in both leads where a unit goes to the battery's posts; `by-profile`: as its book says. */
  negativeFuse: z.enum(["by-profile", "never", "both-at-posts"]),
  /** Taps that pierce the insulation. */
  taps: z.enum(["by-profile", "never", "signals-only"]),
  /** How leads are joined: either way, or one of them only. */
  joints: z.enum(["by-profile", "solder-or-crimp", "solder-only", "crimp-only"]),
  /** What stands here goes before the book's own figure. */
  limits: z.array(limit).check(z.maxLength(60)),
  own: z.array(ownRule).check(z.maxLength(200)),
});
