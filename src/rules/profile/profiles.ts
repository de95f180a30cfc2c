import type { Harness } from "../../graph/harness.ts";
import type { PROFILES } from "../../graph/schema/rules.ts";
import type { Limit, LimitName } from "./limits.ts";

export type ProfileId = (typeof PROFILES)[number];
type Rules = Harness["settings"]["rules"];

/** The figures and habits by which a harness is judged, each with the book it follows. */
export type Profile = {
  readonly id: ProfileId;
  /** "road vehicle", "Thistledown workshop". */
  readonly name: string;
  readonly limits: Readonly<Record<LimitName, Limit>>;
  readonly negativeFuse: Habit<Exclude<Rules["negativeFuse"], "by-profile">>;
  readonly taps: Habit<Exclude<Rules["taps"], "by-profile">>;
  readonly joints: Habit<Exclude<Rules["joints"], "by-profile">>;
};

/** A choice on which books disagree, with the one that is followed. */
export type Habit<Choice extends string> = { readonly choice: Choice; readonly book: string };

type Book = Omit<Profile, "id" | "name">;

const HABIT = "common practice, no source";
const OURS = "a threshold of our own";

const ROAD: Book = {
  limits: {
    fuseDistance_mm: { value: 457, book: "the 18 in of car-audio practice, no source" },
    fuseDistanceSheathed_mm: { value: 1016, book: "33 CFR 183.455(b)" },
    fuseShare_percent: { value: 100, book: "FCS 1362 §4.6.2.1" },
    fuseLoad_percent: { value: 80, book: HABIT },
    groundDrop_V: { value: 0.1, book: "MECP, Testing Voltage Drops" },
    ringsOnStud: { value: 4, book: "four rings a stud, from memory" },
    wiresInCrimp: { value: 3, book: HABIT },
    jointsInLead: { value: 2, book: OURS },
    turnOn_A: { value: 0.5, book: HABIT },
    backFeed_V: { value: 1, book: OURS },
    support_mm: { value: 610, book: "AC 43.13-1B §11-96" },
    bendFactor: { value: 6, book: "NASA Workmanship Standards, picture book 4.03" },
    signalBesidePower_m: { value: 0.3, book: OURS },
    tapedInCabin_mm: { value: 300, book: "FCS 1362 p. 21; the length is ours" },
    feedsApart_m: { value: 1, book: "FCS 1362 §4.6.2; the length is ours" },
    untwisted_mm: { value: 100, book: "makers' repair texts for data buses (80 to 100 mm)" },
    smallestLead_mm2: { value: 0.5, book: HABIT },
    airbagWait_min: { value: 10, book: "the longest of the makers' waiting times" },
  },
  negativeFuse: { choice: "never", book: "FCS 1362 §4.6.3" },
  taps: { choice: "never", book: "FCS 1362 §2.6.1.4" },
  joints: { choice: "solder-or-crimp", book: HABIT },
};

const BOAT: Book = {
  ...ROAD,
  limits: {
    ...ROAD.limits,
    fuseDistance_mm: { value: 178, book: "33 CFR 183.455(b), 7 in" },
    fuseShare_percent: { value: 150, book: "33 CFR 183.455(c)" },
    support_mm: { value: 610, book: "46 CFR 183.340" },
    smallestLead_mm2: { value: 1.3, book: "33 CFR 183.425(d), 16 AWG" },
  },
  joints: { choice: "crimp-only", book: "ABYC E-11, from memory: solder is not the only means of a joint" },
};

const TRAILER: Book = {
  ...ROAD,
  limits: {
    ...ROAD.limits,
    fuseDistance_mm: {
      value: 178,
      book: "33 CFR 183.455(b), 7 in, taken over for the drawbar's constant feed",
    },
    smallestLead_mm2: { value: 0.75, book: HABIT },
  },
};

const BOOKS: Readonly<Record<ProfileId, Book>> = {
  "road-vehicle": ROAD,
  boat: BOAT,
  trailer: TRAILER,
  shop: ROAD,
};

export const PROFILE_NAMES: Readonly<Record<ProfileId, string>> = {
  "road-vehicle": "road vehicle",
  boat: "boat",
  trailer: "trailer",
  shop: "the shop's own",
};

/**
 * The profile that a harness has chosen, with its own figures in place of the book's.
 * A figure of one's own names whose it is: "the limit of Thistledown workshop".
 */
export function profileOf(settings: Pick<Harness["settings"], "rules">): Profile {
  const { rules } = settings;
  const known = made.get(rules);
  if (known) return known;
  const book = BOOKS[rules.profile];
  const own = rules.shop === "" ? "this harness's own limit" : `the limit of ${rules.shop}`;
  const limits: Record<LimitName, Limit> = { ...book.limits };
  for (const { name, value } of rules.limits) limits[name] = { value, book: own };
  const profile: Profile = {
    id: rules.profile,
    name: rules.profile === "shop" && rules.shop !== "" ? rules.shop : PROFILE_NAMES[rules.profile],
    limits,
    negativeFuse: chosen(rules.negativeFuse, book.negativeFuse, own),
    taps: chosen(rules.taps, book.taps, own),
    joints: chosen(rules.joints, book.joints, own),
  };
  made.set(rules, profile);
  return profile;
}

const made = new WeakMap<Rules, Profile>();

function chosen<Choice extends string>(
  said: Choice | "by-profile",
  book: Habit<Choice>,
  own: string,
): Habit<Choice> {
  return said === "by-profile" ? book : { choice: said, book: own };
}
