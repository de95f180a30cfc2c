import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Log } from "sarif";
import { describe, expect, test, vi } from "vitest";
import { emptyHarness } from "../../src/graph/make.ts";
import { serialise } from "../../src/graph/parse/parse.ts";
import { serialiseProfile } from "../../src/rules/profile/profile-file.ts";
import { RULES } from "../../src/rules/registry.ts";
import { build } from "../build.ts";
import { folder, pigtail, sample } from "./pigtail.ts";

vi.setConfig({ testTimeout: 120_000 });

const faulty = sample("wren-receiver-adapter-faults");

describe("pigtail rules", () => {
  test("lists every rule by group, and as JSON of exactly these fields", async () => {
    const [words, json] = await Promise.all([pigtail(["rules"]), pigtail(["rules", "--json"])]);
    expect(words.out).toContain("Loose ends and spares (spares)");
    expect(words.out).toContain(`${RULES.length} rules.`);
    const list = JSON.parse(json.out) as Record<string, unknown>[];
    expect(list).toHaveLength(RULES.length);
    for (const rule of list)
      expect(Object.keys(rule)).toEqual(["id", "group", "severity", "summary", "source", "fixable"]);
    expect(list).toContainEqual(
      expect.objectContaining({ id: "no-fuse", group: "protection", severity: "danger", fixable: true }),
    );
    expect([words.code, json.code]).toEqual([0, 0]);
  });

  test("the page of one: what it holds, an example, its source", async () => {
    const { code, out } = await pigtail(["check", "--explain", "waiver-without-fault"]);
    expect(code).toBe(0);
    expect(out).toContain("In a sound harness: Every waiver still covers something that is found.");
    expect(out).toContain("For example:\n    The waiver of a finding of spare-not-capped");
    expect(out).toContain("Source: common practice, no source.");
  });

  test("a name that no rule has is answered with the nearest", async () => {
    const { code, errors } = await pigtail(["check", "--explain", "no-fuses"]);
    expect(code).toBe(2);
    expect(errors).toContain("Is it no-fuse?");
  });
});

describe("pigtail check --sarif", () => {
  test("prints one log of all files, each result with its rule, place, line and fingerprint", async () => {
    const { code, out } = await pigtail(["check", "--sarif", faulty, sample("full-build")]);
    expect(code).toBe(1);
    const log = JSON.parse(out) as Log;
    expect(log.version).toBe("2.1.0");
    const [run] = log.runs;
    const rules = run!.tool.driver.rules!;
    expect(rules.map(({ id }) => id)).toEqual(RULES.map(({ meta }) => meta.id));
    expect(run!.artifacts).toHaveLength(2);
    const results = run!.results!;
    for (const result of results) {
      expect(rules[result.ruleIndex!]?.id).toBe(result.ruleId);
      expect(["error", "warning", "note"]).toContain(result.level);
      expect(result.message.text).toMatch(/\.$/);
      const [location] = result.locations!;
      expect(location!.physicalLocation!.region!.startLine).toBeGreaterThan(1);
      expect(location!.logicalLocations![0]!.name).not.toBe("");
      expect(Object.values(result.partialFingerprints!)).toHaveLength(1);
    }
    const prints = results.map(({ partialFingerprints }) => JSON.stringify(partialFingerprints));
    expect(new Set(prints).size).toBe(results.length);
    const waived = results.filter(({ suppressions }) => suppressions?.length);
    expect(waived.map(({ ruleId }) => ruleId)).toEqual(["both-feeds-one-kind"]);
    expect(waived[0]!.suppressions![0]!.justification!.length).toBeGreaterThan(10);
    const uri = run!.artifacts![0]!.location!.uri!;
    expect(decodeURI(uri)).toMatch(/wren-receiver-adapter-faults\.harness\.json$/);
  });

  test("a level is the worst that the standard has for danger and fault", async () => {
    const { out } = await pigtail(["check", "--sarif", faulty]);
    const results = (JSON.parse(out) as Log).runs[0]!.results!;
    const levelOf = (id: string) => results.find(({ ruleId }) => ruleId === id)?.level;
    expect(levelOf("loose-live-lead")).toBe("error");
    expect(levelOf("feeds-swapped")).toBe("error");
    expect(levelOf("speaker-polarity-swapped")).toBe("warning");
  });

  test("no file that can be read: an empty log all the same, and exit code 2", async () => {
    const { code, out } = await pigtail(["check", "--sarif", join(folder(), "none.harness.json")]);
    expect(code).toBe(2);
    expect((JSON.parse(out) as Log).runs[0]!.results).toEqual([]);
  });
});

describe("pigtail check --profile", () => {
  const joint = () =>
    build().vehicle("X1", { "1": "mute BN" }).unit("X2", { "1": "mute" }).path("X1.1", "XJ1", "X2.1").harness;
  const shop = {
    ...emptyHarness().settings.rules,
    profile: "shop" as const,
    shop: "Thistledown workshop",
    own: [
      {
        id: "covered",
        words: "Every joint is covered",
        severity: "fault" as const,
        of: "joint" as const,
        where: [],
        must: [{ property: "cover", is: "none-of" as const, values: ["none"] }],
      },
    ],
  };

  test("a shop's file brings its own rules, and SARIF lists them", async () => {
    const at = folder();
    const [file, profile] = [join(at, "one.harness.json"), join(at, "shop.profile.json")];
    writeFileSync(file, serialise(joint()));
    writeFileSync(profile, serialiseProfile(shop));
    const [plain, own, sarif] = await Promise.all([
      pigtail(["check", file]),
      pigtail(["check", file, "--profile", profile]),
      pigtail(["check", file, "--profile", profile, "--sarif"]),
    ]);
    expect(plain.out).not.toContain("own-covered");
    expect(own.out).toMatch(
      /fault {3}Joint XJ1 is against a rule of Thistledown workshop.*\n.*\n.*\[own-covered\]/,
    );
    expect(own.code).toBe(1);
    const { rules } = (JSON.parse(sarif.out) as Log).runs[0]!.tool.driver;
    expect(rules!.map(({ id }) => id)).toContain("own-covered");
  });

  test("one of the book by name; what is neither is said", async () => {
    const boat = await pigtail(["check", sample("full-build"), "--profile", "boat", "--json"]);
    expect(boat.errors).toBe("");
    const none = await pigtail(["check", sample("full-build"), "--profile", "submarine"]);
    expect(none.code).toBe(2);
    expect(none.errors).toContain("road-vehicle, boat, trailer, shop, or a .profile.json file");
    const bad = join(folder(), "bad.profile.json");
    writeFileSync(bad, serialiseProfile({ ...shop, limits: [{ name: "speed" as never, value: 1 }] }));
    const told = await pigtail(["check", sample("full-build"), "--profile", bad]);
    expect(told.code).toBe(2);
    expect(told.errors).toContain("rules.limits[0].name");
  });
});
