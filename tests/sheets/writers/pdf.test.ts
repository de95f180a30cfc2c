import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import { describe, expect, test } from "vitest";
import type { Drawing } from "../../../src/layout/drawing.ts";
import { printable } from "../../../src/layout/text/printable.ts";
import { type Page, type PdfOptions, writePages } from "../../../src/sheets/writers/pdf.ts";
import { readTypeface } from "../../../src/tasks/typeface.mjs";
import { oneText, SPECIMEN } from "./specimen.ts";

const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };
const options: PdfOptions = {
  theme: "print",
  title: "Wren receiver adapter · Φορείο",
  created: new Date(Date.UTC(2026, 0, 2, 3, 4, 5)),
};

function a4(drawing: Drawing, clip?: { x: number; y: number; width: number; height: number }): Page {
  const layer = { drawing, x_mm: 20, y_mm: 30, unit_mm: 0.25 };
  return { width_mm: 297, height_mm: 210, layers: [clip ? { ...layer, clip_mm: clip } : layer] };
}

async function open(bytes: Uint8Array) {
  return getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
}

async function textsOf(bytes: Uint8Array, pageNumber = 1) {
  const page = await (await open(bytes)).getPage(pageNumber);
  const { items } = await page.getTextContent();
  return items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [item] : []));
}

describe("writePages", () => {
  test.each([
    "A4 constant feed RD/BK",
    "12.5 Ω ±0.5 Ω → 0.75 mm² at 40 °C ← × ÷ – — … ≤ ≥ µ",
    "Ηχείο εμπρός αριστερά",
    "Задний ход, жёлтый щит",
    "Žluťoučký kůň, Größe, señal",
    "( ) \\ << /Name >> % endstream",
  ])("text can be read back: %s", async (line) => {
    const { bytes, missingGlyphs } = await writePages([a4(oneText(line))], typeface, options);
    expect(missingGlyphs).toEqual([]);
    const read = (await textsOf(bytes)).map((item) => item.str).join("");
    // The micro sign and the Greek letter mu are one glyph; a reader gives back either.
    expect(read.replace("μ", "µ")).toBe(line.replace("μ", "µ"));
  });

  test("a glyph that the typeface lacks is told and leaves a box", async () => {
    const { bytes, missingGlyphs } = await writePages([a4(oneText("spare 予備 🔌 end"))], typeface, options);
    expect(missingGlyphs).toEqual(["予", "備", "🔌"]);
    expect((await textsOf(bytes)).map((item) => item.str).join("")).toBe("spare □□ □ end");
  });

  test("text stands where the drawing says, in its size, weight and turn", async () => {
    const { bytes } = await writePages([a4(SPECIMEN)], typeface, options);
    const texts = await textsOf(bytes);
    const point = (x: number, y: number) => [
      ((20 + 0.25 * x) * 72) / 25.4,
      ((210 - 30 - 0.25 * y) * 72) / 25.4,
    ];
    const start = texts.find((item) => item.str.startsWith("A4"));
    expect(start?.transform[4]).toBeCloseTo(point(30, 68)[0] ?? 0, 1);
    expect(start?.transform[5]).toBeCloseTo(point(30, 68)[1] ?? 0, 1);
    expect(start?.height).toBeCloseTo((11 * 0.25 * 72) / 25.4, 1);
    const end = texts.find((item) => item.str.startsWith("Ηχείο"));
    expect((end?.transform[4] ?? 0) + (end?.width ?? 0)).toBeCloseTo(point(130, 108)[0] ?? 0, 0);
    const turned = texts.find((item) => item.str === "middle");
    expect(turned?.transform[0]).toBeCloseTo(0, 6);
    expect(turned?.transform[1]).toBeGreaterThan(0);
    expect((turned?.transform[5] ?? 0) + (turned?.width ?? 0) / 2).toBeCloseTo(point(166, 100)[1] ?? 0, 0);
    expect(new Set(texts.map((item) => item.fontName)).size).toBe(2);
  });

  test("pages keep their own size and order, and are listed", async () => {
    const pages: Page[] = [
      { ...a4(oneText("one")), bookmark: "Diagram" },
      { ...a4(oneText("two")), width_mm: 210, height_mm: 297, bookmark: "Wires · Σύρματα" },
    ];
    const { bytes } = await writePages(pages, typeface, options);
    const document = await open(bytes);
    expect(document.numPages).toBe(2);
    const view = (await document.getPage(2)).view;
    expect(view[2]).toBeCloseTo((210 * 72) / 25.4, 1);
    expect(view[3]).toBeCloseTo((297 * 72) / 25.4, 1);
    expect((await textsOf(bytes, 2)).map((item) => item.str)).toEqual(["two"]);
    expect((await document.getOutline()).map((entry) => entry.title)).toEqual(["Diagram", "Wires · Σύρματα"]);
  });

  test("title, creator and date are what was stated, and the same papers are the same bytes", async () => {
    const one = await writePages([a4(SPECIMEN)], typeface, options);
    const two = await writePages([a4(SPECIMEN)], typeface, options);
    expect(Buffer.from(one.bytes).equals(Buffer.from(two.bytes))).toBe(true);
    const { info } = await (await open(one.bytes)).getMetadata();
    expect(info).toMatchObject({
      Title: options.title,
      Creator: "Pigtail",
      CreationDate: "D:20260102030405+00'00'",
    });
    expect(one.bytes.length).toBeLessThan(120_000);
  });

  test("a hostile title or bookmark stays a title", async () => {
    const words = "Wren ) >> /OpenAction << /S /JavaScript /JS (app.alert(1)) \\ \u0000 (";
    const page = { ...a4(oneText("x")), bookmark: words };
    const { bytes } = await writePages([page], typeface, { ...options, title: words, author: words });
    const document = await open(bytes);
    // jsPDF states one of its own: the first page, fitted to the window.
    expect(Object.keys((await document.getOpenAction()) ?? {})).toEqual(["dest"]);
    expect(await document.getJSActions()).toBeNull();
    expect((await document.getMetadata()).info).toMatchObject({
      Title: printable(words),
      Author: printable(words),
    });
    expect((await document.getOutline())[0]?.title).toBe(printable(words));
  });

  test("refuses no pages and coordinates that are not numbers", async () => {
    await expect(writePages([], typeface, options)).rejects.toThrow(RangeError);
    const page = a4(oneText("x"));
    const wrong = { ...page, layers: page.layers.map((layer) => ({ ...layer, x_mm: Number.NaN })) };
    await expect(writePages([wrong], typeface, options)).rejects.toThrow(RangeError);
  });
});
