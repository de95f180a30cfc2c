import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Harness } from "../../src/graph/harness.ts";
import { emptyHarness } from "../../src/graph/make.ts";
import { migrate, migrations } from "../../src/graph/parse/migrate.ts";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { FORMAT_VERSION, sections } from "../../src/graph/schema/harness.ts";
import { PART_KINDS } from "./random.ts";

const folder = new URL("./versions/", import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith(".harness.json"));
const textOf = (name: string) => readFileSync(new URL(name, folder), "utf8");

/** Every text, number and truth value that stands in a value, its keys left out. */
function leaves(value: unknown): unknown[] {
  if (typeof value !== "object" || value === null) return [value];
  return Object.values(value).flatMap(leaves);
}

function read(text: string): Harness {
  const result = parse(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 1));
  return result.harness;
}

describe("files of every version from the first", () => {
  test("one is kept for each", () => {
    expect(files.sort()).toEqual(
      Array.from({ length: FORMAT_VERSION }, (_, index) => `v${index + 1}.harness.json`),
    );
    expect([...migrations.keys()]).toEqual(
      Array.from({ length: FORMAT_VERSION - 1 }, (_, index) => index + 1),
    );
  });

  test.each(files)("%s is read, brought up to date, and has lost nothing", (name) => {
    const raw = JSON.parse(textOf(name)) as Record<string, unknown>;
    expect(raw.formatVersion).toBe(Number(name.slice(1).split(".")[0]));
    const harness = read(textOf(name));
    expect(harness.formatVersion).toBe(FORMAT_VERSION);
    const kept = new Set(leaves(harness));
    const { formatVersion: _, ...typed } = raw;
    expect(leaves(typed).filter((leaf) => !kept.has(leaf))).toEqual([]);
    expect(read(serialise(harness))).toEqual(harness);
  });

  test("the newest is equal as it stands, to the letter", () => {
    const text = textOf(`v${FORMAT_VERSION}.harness.json`);
    expect(read(text)).toEqual(JSON.parse(text));
    expect(serialise(read(text))).toBe(text);
  });

  test("the newest has every kind of part and something in every section", () => {
    const harness = read(textOf(`v${FORMAT_VERSION}.harness.json`));
    expect(new Set(Object.values(harness.parts).map((part) => part.kind))).toEqual(new Set(PART_KINDS));
    for (const name of Object.keys(sections) as (keyof typeof sections)[])
      expect(Object.keys(harness[name]).length, name).toBeGreaterThan(0);
    expect(Object.keys(harness.layout.places).length).toBeGreaterThan(0);
    expect(Object.keys(harness.layout.paths).length).toBeGreaterThan(0);
  });
});

describe("migrations", () => {
  const old = { format: "pigtail-harness", formatVersion: FORMAT_VERSION - 2, cars: "Wren", extra: 1 };
  const steps = new Map([
    [FORMAT_VERSION - 2, ({ cars, ...rest }: Record<string, unknown>) => ({ ...rest, vehicle: cars })],
    [
      FORMAT_VERSION - 1,
      (raw: Record<string, unknown>) => ({ ...raw, vehicle: `van ${String(raw.vehicle)}` }),
    ],
  ]);

  test("run in order up to this version and leave the file's value as it was", () => {
    const before = structuredClone(old);
    expect(migrate(old, steps)).toEqual({
      format: "pigtail-harness",
      formatVersion: FORMAT_VERSION,
      vehicle: "van Wren",
      extra: 1,
    });
    expect(old).toEqual(before);
  });

  test("stop where a step is missing, and leave this and newer versions alone", () => {
    expect(migrate({ formatVersion: FORMAT_VERSION - 3 }, steps)).toEqual({
      formatVersion: FORMAT_VERSION - 3,
    });
    for (const formatVersion of [FORMAT_VERSION, FORMAT_VERSION + 7, "x", null, Number.NaN])
      expect(migrate({ formatVersion }, steps)).toEqual({ formatVersion });
  });

  test("a version that never was is a problem of that field", () => {
    for (const formatVersion of [0, -1, 1.5, "1", null]) {
      const result = parse(JSON.stringify({ ...emptyHarness(), formatVersion }));
      expect(result).toMatchObject({
        ok: false,
        problems: [{ code: "wrong-value", where: "formatVersion" }],
      });
    }
  });
});

describe("what a newer version wrote", () => {
  /** Puts an unknown field into every object there is, however deep. */
  function sprinkled(value: unknown): unknown {
    if (Array.isArray(value)) return value.map(sprinkled);
    if (typeof value !== "object" || value === null) return value;
    const inside = Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, sprinkled(inner)]));
    return { ...inside, fromTheFuture: { list: [1, null], text: "x" } };
  }

  /** Sections are keyed by id, so there an unknown field is an unknown entry; everywhere else it is kept. */
  function futureFile(): Record<string, unknown> {
    const raw = JSON.parse(textOf(`v${FORMAT_VERSION}.harness.json`)) as Record<
      string,
      Record<string, unknown>
    >;
    const file = sprinkled(raw) as Record<string, Record<string, unknown>>;
    for (const name of Object.keys(sections)) delete file[name]!.fromTheFuture;
    for (const name of ["places", "paths"])
      delete (file.layout![name] as Record<string, unknown>).fromTheFuture;
    return { ...file, formatVersion: FORMAT_VERSION + 3 };
  }

  test("is kept at every level through reading and saving", () => {
    const file = futureFile();
    const result = parse(JSON.stringify(file));
    expect(result.ok && result.harness).toEqual(file);
    expect(result.ok && JSON.parse(serialise(result.harness))).toEqual(file);
    expect(JSON.stringify(file).split("fromTheFuture").length).toBeGreaterThan(80);
  });

  test("is said in a note; a file of this version has none", () => {
    const result = parse(JSON.stringify(futureFile()));
    expect(result.ok && result.notes).toEqual([
      expect.stringContaining(`format version ${FORMAT_VERSION + 3}`),
    ]);
    expect(parse(textOf(`v${FORMAT_VERSION}.harness.json`))).toMatchObject({ notes: [] });
  });

  test("and what cannot be understood sends the person to a newer Pigtail", () => {
    const file = futureFile();
    (file.parts as Record<string, unknown>)["p:new"] = { id: "p:new", kind: "fuel-cell" };
    const result = parse(JSON.stringify(file));
    expect(result).toMatchObject({ ok: false, problems: [{ where: "parts.p:new.kind" }] });
    expect(!result.ok && result.problems[0]!.next).toContain("newer Pigtail");
  });
});

describe("version 2 adds what the electrical sums read, each as not stated", () => {
  const upgraded = read(textOf("v1.harness.json"));

  test("to loads, boxes, wires and settings of a file of version 1", () => {
    const kinds = (kind: string) => Object.values(upgraded.parts).filter((part) => part.kind === kind);
    for (const load of kinds("load"))
      expect(load).toMatchObject({ behaviour: "unknown", standby_A: "unknown" });
    for (const box of kinds("module"))
      expect(box).toMatchObject({
        leastLoad_ohm: "unknown",
        channelPower_W: "unknown",
        standby_A: "unknown",
      });
    for (const wire of Object.values(upgraded.wires)) expect(wire.material).toBe("unknown");
    expect(upgraded.settings.electrical).toEqual(emptyHarness().settings.electrical);
  });

  test("what stands in the file already stays, and what is no object is complained of", () => {
    const raw = JSON.parse(textOf("v1.harness.json")) as Record<string, Record<string, unknown>>;
    const [id, wire] = Object.entries(raw.wires!)[0]! as [string, Record<string, unknown>];
    const given = parse(
      JSON.stringify({ ...raw, wires: { ...raw.wires, [id]: { ...wire, material: "cca-15" } } }),
    );
    expect(given).toMatchObject({ ok: true, harness: { wires: { [id]: { material: "cca-15" } } } });
    const broken = parse(JSON.stringify({ ...raw, parts: { ...raw.parts, "p:no": 7 }, settings: "none" }));
    expect(!broken.ok && broken.problems.map((one) => one.where)).toEqual(["settings", "parts.p:no"]);
  });
});

describe("version 3 adds what the whole rule book reads, each as not stated", () => {
  const upgraded = read(textOf("v2.harness.json"));
  const kinds = (kind: string) => Object.values(upgraded.parts).filter((part) => part.kind === kind);

  test("to parts and cavities of a file of version 2", () => {
    const cavities = Object.values(upgraded.parts).flatMap((part) =>
      part.kind === "connector" || part.kind === "module" ? part.cavities : [],
    );
    expect(cavities.length).toBeGreaterThan(5);
    for (const cavity of cavities) expect(cavity).toMatchObject({ gives: "unknown", actsOn: "unknown" });
    for (const [kind, added] of [
      ["splice", { zone: "unknown", liveHalf: "unknown", barrel: "unknown" }],
      ["ground", { serves: "unknown" }],
      ["supply", { cover: "unknown", sensor: "unknown" }],
      ["fuse", { holder: "unknown" }],
      ["load", { voltage_V: "unknown", video: "unknown" }],
      [
        "module",
        { sleeps: "unknown", voltage_V: "unknown", video: "unknown", signalGround: "unknown", near: [] },
      ],
    ] as const) {
      expect(kinds(kind).length, kind).toBeGreaterThan(0);
      for (const part of kinds(kind)) expect(part).toMatchObject(added);
    }
  });

  test("to wires, runs, settings and waivers", () => {
    for (const wire of Object.values(upgraded.wires)) expect(wire.strands).toBe("unknown");
    for (const run of Object.values(upgraded.runs))
      expect(run).toMatchObject({
        near: [],
        hinge: "unknown",
        support_m: "unknown",
        bend_mm: "unknown",
        dripLoop: "unknown",
        drilled: "unknown",
      });
    expect(upgraded.settings.rules).toEqual(emptyHarness().settings.rules);
    expect(upgraded.settings.vehicle).toEqual(emptyHarness().settings.vehicle);
    for (const waiver of Object.values(upgraded.waivers)) expect(waiver.covers).toBe("finding");
  });

  test("what stands in the file already stays, and what is no object is complained of", () => {
    const raw = JSON.parse(textOf("v2.harness.json")) as Record<string, Record<string, unknown>>;
    const of = (section: string, id: string) => raw[section]![id] as Record<string, unknown>;
    const given = parse(
      JSON.stringify({
        ...raw,
        settings: { ...raw.settings, rules: { shop: "Thistledown" } },
        parts: { ...raw.parts, "p:XJ1": { ...of("parts", "p:XJ1"), zone: "outside" } },
        runs: { ...raw.runs, "r:1": { ...of("runs", "r:1"), near: ["heat"] } },
        waivers: { ...raw.waivers, "v:1": { ...of("waivers", "v:1"), covers: "rule" } },
      }),
    );
    expect(given).toMatchObject({
      ok: true,
      harness: {
        settings: { rules: { shop: "Thistledown", profile: "road-vehicle" } },
        parts: { "p:XJ1": { zone: "outside", barrel: "unknown" } },
        runs: { "r:1": { near: ["heat"], hinge: "unknown" } },
        waivers: { "v:1": { covers: "rule" } },
      },
    });
    const broken = parse(
      JSON.stringify({
        ...raw,
        settings: { ...raw.settings, vehicle: 3 },
        parts: { ...raw.parts, "p:X1": { ...of("parts", "p:X1"), cavities: [7] }, "p:no": 7 },
        runs: { ...raw.runs, "r:1": { ...of("runs", "r:1"), near: ["dragons"] } },
      }),
    );
    expect(!broken.ok && broken.problems.map((one) => one.where)).toEqual([
      "settings.vehicle",
      "parts.p:X1.cavities[0]",
      "parts.p:no",
      "runs.r:1.near[0]",
    ]);
  });

  test("the kept file gives each of them a telling value", () => {
    const kept = read(textOf("v3.harness.json"));
    expect(kept.settings.rules.own).toHaveLength(1);
    expect(kept.settings.vehicle).toEqual({ highVoltage: "yes", lamps: "watched" });
    expect(kept.parts).toMatchObject({
      "p:XJ1": { cover: "cloth-over-tape", zone: "engine-bay", liveHalf: "shrouded", barrel: "blue" },
      "p:XE1": { surface: "seat-belt-bolt", serves: "safety-system" },
      "p:G1": { cover: "boot", sensor: "on-minus" },
      "p:F1": { holder: "tap" },
      "p:S1": { operatedBy: "isolator" },
      "p:E1": { voltage_V: { least_V: 9, most_V: 16 }, video: "pal" },
      "p:A1": { sleeps: "yes", signalGround: "isolated", near: ["heat", "drivers-sight"] },
    });
    expect(kept.runs).toMatchObject({ "r:1": { hinge: "twists-along", support_m: 0.35, bend_mm: 40 } });
    expect(new Set(Object.values(kept.waivers).map((waiver) => waiver.covers))).toEqual(
      new Set(["finding", "rule", "group"]),
    );
  });
});
