import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { SAMPLE_LIST } from "../../samples/list.ts";
import { serialise } from "../../src/graph/parse/parse.ts";
import { Build } from "../build.ts";
import { runDecks } from "../spice/ngspice.ts";
import { folder, pigtail, sample } from "./pigtail.ts";

// Each of these starts a process of its own, which on a busy machine takes seconds.
vi.setConfig({ testTimeout: 120_000 });

type Report = {
  readonly contacts: Readonly<Record<string, { readonly volts: number | null }>>;
  readonly wires: Readonly<Record<string, Readonly<Record<string, number | null>>>>;
  readonly fuses: Readonly<Record<string, object>>;
  readonly warnings: readonly {
    readonly code: string;
    readonly message: string;
    readonly at: readonly string[];
  }[];
} & Readonly<Record<string, unknown>>;

const lamps = sample("work-lamp-relay");
const solved = async (...args: readonly string[]): Promise<Report> => {
  const { code, out, errors } = await pigtail(["solve", "--json", ...args]);
  expect([code, errors]).toEqual([0, ""]);
  return JSON.parse(out) as Report;
};

describe("pigtail solve", () => {
  test("--json gives contacts, wires and fuses by designation, and null where a contact floats", async () => {
    const report = await solved(lamps, "--key", "run", "--with", "switches");
    expect(Object.keys(report)).toEqual([
      "key",
      "with",
      "contacts",
      "wires",
      "fuses",
      "relays",
      "loads",
      "sources",
      "warnings",
      "assumptions",
    ]);
    expect(report.with).toEqual(["switches-on"]);
    expect(report.contacts["E1.+"]!.volts).toBeGreaterThan(11.5);
    expect(Object.keys(report.wires.W8!)).toEqual(["amps", "dropVolts", "watts", "percentOfAmpacity"]);
    // Two lamps of 4 A at 12 V through 6.5 m of 2.5 mm²: 51.9 mΩ.
    expect(report.wires.W8!.amps).toBeCloseTo(8, 0);
    expect(report.wires.W8!.dropVolts).toBeCloseTo((report.wires.W8!.amps as number) * 6.5 * 0.00798, 6);
    expect(report.fuses.F1).toEqual({
      amps: expect.closeTo(8.1, 1),
      ratingAmps: 15,
      percentOfRating: expect.closeTo(54, 0),
      verdict: "holds",
    });
    expect(report.relays).toMatchObject({ K1: { pulled: true } });
    const sound = await solved(sample("amplified-sound"));
    expect(sound.contacts["P1.+"]).toEqual({ volts: null });
  });

  test("--with takes short words, functions, several times, and a switch by its designation", async () => {
    const byName = await solved(lamps, "--with", "S1");
    expect(byName.relays).toMatchObject({ K1: { pulled: true } });
    const trailer = await solved(
      sample("trailer-13-to-7"),
      "--key",
      "off",
      "--with",
      "lights,brake",
      "--with",
      "indicator-left",
    );
    expect(trailer.with).toEqual(["lights-on", "brake-on", "indicator-left"]);
    for (const pin of ["X2.1", "X2.5", "X2.6"]) expect(trailer.contacts[pin]!.volts).toBeGreaterThan(12);
    expect(trailer.contacts["X2.4"]!.volts).toBeLessThan(0.1);
  });

  test("in words: tables, warnings first, and what was taken for granted", async () => {
    const file = join(folder(), "short.harness.json");
    const build = new Build()
      .part("supply", "G1", { voltage_V: 12, resistance_ohm: 0.01 })
      .wire("G1.+", "XE1", "RD", { area_mm2: 4, length_m: 0.1 })
      .wire("G1.−", "XE1", "BK", { area_mm2: 25, length_m: 0.1 });
    writeFileSync(file, serialise(build.harness));
    // 12 V over 10 mΩ, 0.1 m × 4.95 mΩ/m and 0.1 m × 0.78 mΩ/m: 1135 A.
    const { code, out } = await pigtail(["solve", file, "--key", "off"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^.*short\.harness\.json: off\n\n {2}! G1\.\+ is shorted: 1135 A would flow\.\n/);
    expect(out).toMatch(/\nWires\n +A +drop V +W +of ampacity\n {2}W1 +113\d\.\d{3} /);
    expect(out).toContain(
      "\nTaken for granted\n  W1, W2: metal not stated: copper assumed (common practice, no source)\n",
    );
  });

  test("what it cannot use ends with 2 and says what would do", async () => {
    const wrong = await Promise.all(
      [
        ["solve"],
        ["solve", lamps, "--key", "on"],
        ["solve", lamps, "--with", "fog"],
        ["solve", lamps, "--json", "--spice"],
        ["solve", "nothing.harness.json"],
      ].map((args) => pigtail(args)),
    );
    expect(wrong.map(({ code, out }) => [code, out])).toEqual(wrong.map(() => [2, ""]));
    expect(wrong[1]!.errors).toBe('--key is one of off, accessory, run, crank, not "on".\n');
    expect(wrong[2]!.errors).toBe(
      '--with knows no "fog". → In this harness it may be engine-running, switches-on, or a switch by its designation.\n',
    );
  });

  test("--spice: ngspice finds the same volts at every contact of every sample", async () => {
    const args = ["--key", "run", "--with", "unit,lights,reverse,switches,doors,parking-brake"];
    const ids = SAMPLE_LIST.map(({ id }) => id);
    const [reports, decks] = await Promise.all([
      Promise.all(ids.map((id) => solved(sample(id), ...args))),
      Promise.all(ids.map(async (id) => (await pigtail(["solve", sample(id), "--spice", ...args])).out)),
    ]);
    const found = runDecks(decks);
    let compared = 0;
    ids.forEach((id, index) => {
      const nodes = new Map(
        [...decks[index]!.matchAll(/^\* (n\d+) = (.*)$/gm)].map(([, node, name]) => [
          name!.replaceAll("−", "-"),
          node!,
        ]),
      );
      for (const [name, { volts }] of Object.entries(reports[index]!.contacts)) {
        if (volts === null) continue;
        const theirs = found[index]!.get(`v(${nodes.get(name.replaceAll("−", "-"))})`);
        // A contact that nothing touches is not in the deck.
        if (theirs === undefined && volts === 0) continue;
        expect(Math.abs(theirs! - volts), `${id} ${name}: ${theirs} and ${volts}`).toBeLessThan(2e-5);
        compared++;
      }
    });
    expect(compared).toBeGreaterThan(300);
  });
});
