import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { beforeAll, describe, expect, test } from "vitest";
import type { Harness, WaiverId } from "../../src/graph/harness.ts";
import { makeScene } from "../../src/layout/scene.ts";
import { check } from "../../src/rules/check.ts";
import { diagramPicture, diagramSvg } from "../../src/sheets/diagram-picture.ts";
import { drawFrame, fields } from "../../src/sheets/frame.ts";
import { sheetFormat } from "../../src/sheets/paper-size.ts";
import { makePapers, PAPER_KINDS, type PaperOptions, writePapersPdf } from "../../src/sheets/papers.ts";
import { LEAST_TEXT_pt } from "../../src/sheets/tiling.ts";
import type { Page } from "../../src/sheets/writers/pdf.ts";
import { readTypeface } from "../../src/tasks/typeface.mjs";
import { generate } from "../bench/generate.ts";
import { build } from "../build.ts";
import { textsIn, wordsIn } from "./texts.ts";

const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };
const date = new Date(Date.UTC(2026, 2, 2));
const A4: PaperOptions = { size: "A4", orientation: "landscape", fit: "one-page", theme: "print", date };

const wordsOf = (page: Page) => page.layers.flatMap((layer) => wordsIn(layer.drawing.items));

function adapter(): Harness {
  const harness = build()
    .vehicle("X1", { "1": "constant-feed RD 1.5 fuse:15", "2": "ground BK 1.5", "3": "mute BN spare" })
    .unit("X2", { "1": "constant-feed YE 1.5", "2": "ground BK 1.5" })
    .path("X1.1", "XJ1", "X2.1")
    .path("X1.2", "X2.2")
    .path("X1.3", "XC1").harness;
  return {
    ...harness,
    titleBlock: {
      owner: "Thistledown county mobile library",
      documentNumber: "TML-W-001",
      revision: "C",
      dateOfIssue: "2026-03-01",
      title: "Receiver adapter",
      supplementaryTitle: "for the dash of the van",
      creator: "workshop",
      approver: "fleet office",
      documentType: "wiring diagram",
      status: "under-test",
      language: "en",
      vehicle: "step van Wren",
    },
  };
}

describe("makePapers", () => {
  test("every sheet carries every field of the title block and its number", () => {
    const pages = makePapers(adapter(), A4);
    expect(pages.length).toBeGreaterThan(1);
    for (const [index, page] of pages.entries()) {
      expect(wordsOf(page)).toEqual(
        expect.arrayContaining([
          "Thistledown county mobile library",
          "TML-W-001",
          "C",
          "2026-03-01",
          "Receiver adapter",
          "for the dash of the van",
          "workshop",
          "fleet office",
          "wiring diagram",
          "under test",
          "en",
          "step van Wren",
          "12 V, negative ground",
          "A4 landscape",
          `${index + 1} of ${pages.length}`,
        ]),
      );
    }
  });

  test("the date of printing stands in where there is no date of issue", () => {
    const harness = adapter();
    const undated = { ...harness, titleBlock: { ...harness.titleBlock, dateOfIssue: "" } };
    expect(wordsOf(makePapers(undated, A4)[0]!)).toContain("printed 2026-03-02");
  });

  test.each(["A4", "A3", "Letter", "Tabloid"] as const)(
    "%s, both ways: everything lies inside the frame, and no text is under 6 points",
    (size) => {
      const harness = generate(60, 2);
      const source = { scene: makeScene(harness), findings: check(harness) };
      for (const orientation of ["landscape", "portrait"] as const) {
        for (const fit of ["one-page", "tiles"] as const) {
          const pages = makePapers(harness, { ...A4, size, orientation, fit }, source);
          const { frame } = sheetFormat(size, orientation);
          for (const page of pages) {
            for (const { drawing, unit_mm } of page.layers) {
              for (const text of textsIn(drawing.items)) {
                expect((text.size * unit_mm * 72) / 25.4).toBeGreaterThanOrEqual(LEAST_TEXT_pt - 1e-6);
              }
            }
            const clip = page.layers.find((layer) => layer.clip_mm)?.clip_mm;
            if (!clip) continue;
            expect(clip.x).toBeGreaterThanOrEqual(frame.x * 0.25);
            expect(clip.x + clip.width).toBeLessThanOrEqual((frame.x + frame.width) * 0.25);
          }
        }
      }
    },
  );

  test("says why one page became tiles, and which paper would do", () => {
    const harness = generate(60, 0);
    const [first] = makePapers(harness, A4);
    const words = wordsOf(first!).join(" ");
    expect(words).toMatch(
      /On one A4 sheet the smallest text would be \d\.\d pt, under 6 pt: tiled instead\./,
    );
    expect(words).toMatch(/holds it on/);
    expect(words).toMatch(/Tile 1 of \d+: row 1 of \d+, column 1 of \d+/);
  });

  test("tiles together show every wire number and every designation", () => {
    const harness = generate(60, 0);
    const pages = makePapers(harness, { ...A4, which: ["diagram"] });
    expect(pages.length).toBeGreaterThan(1);
    const words = new Set(pages.flatMap(wordsOf));
    for (const part of Object.values(harness.parts)) expect(words).toContain(part.designation);
    const labels = [...words].join(" ");
    for (const [, placed] of makeScene(harness).wires) {
      if (placed.labels.length > 0) expect(labels).toContain(`${placed.wire.designation} `);
    }
  });

  test("open findings and waivers are listed with their severity and reason; a clean harness says so", () => {
    expect(wordsOf(makePapers(adapter(), A4)[0]!)).toContain("No open findings.");
    const loose = build()
      .vehicle("X1", { "1": "constant-feed RD", "2": "speed BU" })
      .wire("X1.1", "loose")
      .wire("X1.2", "loose").harness;
    const found = check(loose);
    const target = found.find((finding) =>
      finding.about.some((one) => "wire" in one && one.wire === "w:W2"),
    )!;
    const waived: Harness = {
      ...loose,
      waivers: {
        ["v:1" as WaiverId]: {
          id: "v:1" as WaiverId,
          covers: "finding",
          rule: target.rule,
          about: target.about,
          reason: "cut back next week",
          by: "E. F.",
          date: "2026-03-02",
        },
      },
    };
    const pages = makePapers(waived, A4);
    const all = pages.flatMap(wordsOf).join(" ");
    const open = check(waived).filter((finding) => finding.waiver === null);
    expect(open.length).toBeGreaterThan(0);
    for (const finding of open) expect(all).toContain(finding.message.split(" ").slice(0, 3).join(" "));
    expect(all).toContain("cut back next week");
    expect(wordsOf(pages[0]!).join(" ")).toMatch(
      /Open findings: .*; 1 waived\. In full, with the legend: sheet 2\./,
    );
    expect(wordsOf(pages[1]!)).toContain("Open findings");
  });

  test("the usual cautions stand on every diagram sheet", () => {
    for (const orientation of ["landscape", "portrait"] as const) {
      const words = wordsOf(makePapers(adapter(), { ...A4, orientation })[0]!).join(" ");
      for (const said of [
        "negative lead first",
        "Airbag",
        "high-voltage",
        "driver's sight",
        "local law",
        "licensed",
      ]) {
        expect(words).toContain(said);
      }
    }
  });

  test("the legend explains the colour letters that are used, and no others", () => {
    const words = wordsOf(makePapers(adapter(), A4)[0]!);
    expect(words).toEqual(expect.arrayContaining(["RD  red", "YE  yellow", "BK  black", "BN  brown"]));
    expect(words).not.toContain("VT  violet");
    expect(words).toContain("joint not stated");
  });

  test("only the papers that are asked for, in their own order", () => {
    const pages = makePapers(adapter(), { ...A4, which: ["parts", "wires"] });
    expect(pages).toHaveLength(1);
    expect(wordsOf(pages[0]!)).toContain("Wire table, Parts list");
    expect(makePapers(adapter(), { ...A4, which: [] })).toEqual([]);
  });

  test("an empty harness prints a sheet that says what is missing", async () => {
    const empty = build().harness;
    const pages = makePapers(empty, A4);
    expect(pages.flatMap(wordsOf)).toEqual(
      expect.arrayContaining(["Untitled", "No wires yet.", "No joints."]),
    );
    expect((await writePapersPdf(empty, A4, typeface)).bytes.length).toBeGreaterThan(1000);
  });
});

describe("writePapersPdf", () => {
  const harness = generate(200, 10);
  const texts: string[][] = [];
  const sizes_pt: number[] = [];
  let missing: readonly string[] = ["not written"];

  beforeAll(async () => {
    const written = await writePapersPdf(harness, { ...A4, size: "A3", fit: "tiles" }, typeface);
    missing = written.missingGlyphs;
    const pdf = await getDocument({ data: written.bytes, verbosity: 0 }).promise;
    for (let number = 1; number <= pdf.numPages; number++) {
      const content = await (await pdf.getPage(number)).getTextContent();
      const items = content.items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [item] : []));
      texts.push(items.map((item) => item.str));
      sizes_pt.push(...items.map((item) => Math.hypot(item.transform[0], item.transform[1])));
    }
  }, 120_000);

  test("holds every wire number and designation of a harness of 200 wires", () => {
    const all = new Set(texts.flat());
    for (const wire of Object.values(harness.wires)) expect(all).toContain(wire.designation);
    for (const part of Object.values(harness.parts)) {
      expect([...all].some((text) => text.split(/[ ,.]/).includes(part.designation))).toBe(true);
    }
    expect(missing).toEqual([]);
  });

  test("holds no text under 6 points, and each sheet's number", () => {
    // A hundredth of a point is what the file keeps.
    expect(Math.min(...sizes_pt)).toBeGreaterThanOrEqual(LEAST_TEXT_pt - 0.01);
    texts.forEach((page, index) => {
      expect(page).toContain(`${index + 1} of ${texts.length}`);
    });
  });
});

describe("frame", () => {
  test("fields are 50 mm, counted from the middle, and cover the side", () => {
    const found = fields(80, 80 + 1068);
    expect(found[0]![0]).toBe(80);
    expect(found.at(-1)![1]).toBe(1148);
    for (const [index, [from, to]] of found.entries()) {
      if (index > 0) expect(from).toBe(found[index - 1]![1]);
      if (index > 0 && index < found.length - 1) expect(to - from).toBe(200);
    }
    expect(found.some(([from]) => from === 80 + 534)).toBe(true);
  });

  test("letters leave out I and O", () => {
    const words = wordsIn(drawFrame(sheetFormat("A3", "portrait")));
    expect(words).toContain("H");
    expect(words).not.toContain("I");
    expect(words).not.toContain("O");
  });
});

describe("hostile texts", () => {
  const nasty = '"><script>alert(1)</script> & \u202e\u0000 =cmd';
  const harness: Harness = (() => {
    const made = build()
      .vehicle("X1", { "1": "constant-feed RD" }, { name: nasty, shell: nasty })
      .wire("X1.1", "loose", "RD", {
        label: nasty,
        note: nasty.repeat(100),
        designation: `W${nasty}`,
      }).harness;
    return { ...made, titleBlock: { ...made.titleBlock, title: nasty, owner: nasty, documentNumber: nasty } };
  })();
  const source = { scene: makeScene(harness), findings: check(harness) };

  test("stay text in a picture", () => {
    const svg = diagramSvg(harness, source, date, { theme: "print" });
    expect(svg).not.toContain("<script");
    expect(svg).toContain("&lt;script&gt;");
    for (const hidden of ["\u0000", "\u202e"]) expect(svg).not.toContain(hidden);
  });

  test("print", async () => {
    const written = await writePapersPdf(harness, A4, typeface, source);
    const pdf = await getDocument({ data: written.bytes, verbosity: 0 }).promise;
    expect(pdf.numPages).toBe(makePapers(harness, A4, source).length);
  });
});

test("a picture holds the whole legend and every finding, however many", () => {
  const harness = generate(160, 1);
  const findings = check(harness);
  expect(findings.length).toBeGreaterThan(10);
  const picture = diagramPicture(harness, { scene: makeScene(harness), findings }, date);
  const words = wordsIn(picture.items).join(" ");
  for (const finding of findings) expect(words).toContain(finding.message.split(" ").slice(0, 3).join(" "));
  const lowest = Math.max(...textsIn(picture.items).map((text) => text.y));
  expect(lowest).toBeLessThan(picture.height);
});

test("every kind of paper can be printed alone", () => {
  const harness = build().vehicle("X1", { "1": "constant-feed RD" }).path("X1.1", "XJ1").harness;
  for (const kind of PAPER_KINDS) {
    expect(makePapers(harness, { ...A4, which: [kind] }).length).toBeGreaterThanOrEqual(1);
  }
});
