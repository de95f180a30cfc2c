import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { emptyHarness } from "../../../src/graph/make.ts";
import { LIMITS, PROFILES } from "../../../src/graph/schema/rules.ts";
import { LIMIT_WORDS } from "../../../src/rules/profile/limits.ts";
import { parseProfile, serialiseProfile } from "../../../src/rules/profile/profile-file.ts";
import { profileOf } from "../../../src/rules/profile/profiles.ts";

const usual = emptyHarness().settings.rules;

describe("the books that a harness is checked by", () => {
  test.each(PROFILES)("%s: every limit has a figure, a book and words", (profile) => {
    const { limits } = profileOf({ rules: { ...usual, profile } });
    expect(Object.keys(limits).sort()).toEqual([...LIMITS].sort());
    for (const name of LIMITS) {
      expect(limits[name].value).toBeGreaterThan(0);
      expect(limits[name].book.length).toBeGreaterThan(5);
      expect(LIMIT_WORDS[name].words).toMatch(/^[A-Z]/);
    }
  });

  // 33 CFR 183.455: a fuse within 7 in (178 mm) of the source, at most 150 % of what the conductor bears.
  test("a boat follows 33 CFR 183.455, a road vehicle FCS 1362", () => {
    const boat = profileOf({ rules: { ...usual, profile: "boat" } }).limits;
    expect(boat.fuseDistance_mm.value).toBe(178);
    expect(boat.fuseShare_percent).toEqual({ value: 150, book: "33 CFR 183.455(c)" });
    const road = profileOf({ rules: usual });
    expect(road.limits.fuseShare_percent.value).toBe(100);
    expect(road.negativeFuse).toEqual({ choice: "never", book: "FCS 1362 §4.6.3" });
  });

  test("what the shop sets goes before the book, under the shop's name", () => {
    const own = profileOf({
      rules: {
        ...usual,
        shop: "Thistledown workshop",
        taps: "signals-only",
        limits: [{ name: "ringsOnStud", value: 3 }],
      },
    });
    expect(own.limits.ringsOnStud).toEqual({ value: 3, book: "the limit of Thistledown workshop" });
    expect(own.limits.wiresInCrimp.book).not.toContain("Thistledown");
    expect(own.taps).toEqual({ choice: "signals-only", book: "the limit of Thistledown workshop" });
    const nameless = profileOf({ rules: { ...usual, limits: [{ name: "ringsOnStud", value: 3 }] } });
    expect(nameless.limits.ringsOnStud.book).toBe("this harness's own limit");
  });
});

describe("a profile file", () => {
  test("is read as it was written", () => {
    const rules = fc.record({
      profile: fc.constantFrom(...PROFILES),
      shop: fc.string({ maxLength: 40 }),
      negativeFuse: fc.constantFrom("by-profile" as const, "never" as const, "both-at-posts" as const),
      taps: fc.constantFrom("by-profile" as const, "never" as const),
      joints: fc.constantFrom("by-profile" as const, "crimp-only" as const),
      limits: fc.array(fc.record({ name: fc.constantFrom(...LIMITS), value: fc.nat({ max: 5000 }) })),
      own: fc.constant([]),
    });
    fc.assert(
      fc.property(rules, (given) => {
        const read = parseProfile(serialiseProfile(given));
        expect(read).toEqual({ ok: true, rules: given, notes: [] });
      }),
      { seed: 20261105, numRuns: 60 },
    );
  });

  test.each([
    ["no JSON", "limits: 3", "not-json"],
    ["another file of ours", JSON.stringify(emptyHarness()), "not-a-profile"],
    [
      "a limit that there is not",
      serialiseProfile({ ...usual, limits: [{ name: "speed" as never, value: 1 }] }),
      "wrong-value",
    ],
    [
      "a limit below nothing",
      serialiseProfile({ ...usual, limits: [{ name: "turnOn_A", value: -1 }] }),
      "wrong-value",
    ],
  ])("%s is told with its place", (_, text, code) => {
    const read = parseProfile(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.problems[0]!.code).toBe(code);
  });

  test("of a newer version is read with a note", () => {
    const text = serialiseProfile(usual).replace('"formatVersion": 1', '"formatVersion": 9');
    const read = parseProfile(text);
    expect(read.ok && read.notes[0]).toContain("format version 9");
  });
});
