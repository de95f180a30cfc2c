import { createCanvas, GlobalFonts } from "@napi-rs/canvas";
import { describe, expect, test } from "vitest";
import { subsetFont } from "../../../src/sheets/writers/subset.ts";
import { readTrueType } from "../../../src/tasks/true-type.mjs";
import { readTypeface } from "../../../src/tasks/typeface.mjs";

const TEXT = "Größe Ω ² ° ± → é ñ ž Ηχείο Ё й";

describe("subsetFont", () => {
  const whole = readTypeface("regular");
  const part = subsetFont(whole, TEXT);

  test("holds the glyphs of the text with their advances, and no others", () => {
    const all = readTrueType(whole);
    const few = readTrueType(part);
    expect([...few.advances.keys()].sort()).toEqual(
      [...new Set(TEXT)].map((character) => character.codePointAt(0)).sort(),
    );
    for (const [code, advance] of few.advances) expect(advance).toBe(all.advances.get(code));
    expect(part.length).toBeLessThan(12_000);
  });

  test("draws the same picture as the whole font, composed letters included", () => {
    GlobalFonts.register(Buffer.from(whole), "Whole");
    GlobalFonts.register(Buffer.from(part), "Part");
    expect(difference(picture("Part", TEXT), picture("Whole", TEXT))).toBeLessThan(0.03);
    expect(
      difference(picture("Part", TEXT), picture("Whole", "Grosse Ω 2 o + → e n z Hxeio E и")),
    ).toBeGreaterThan(0.2);
  });

  test("passes over what the font lacks and refuses what is no font", () => {
    expect(readTrueType(subsetFont(whole, "予🔌A\uffff")).advances.size).toBe(1);
    expect(() => subsetFont(new Uint8Array(64), "A")).toThrow(RangeError);
  });
});

function picture(family: string, text: string): Uint8ClampedArray {
  const canvas = createCanvas(3200, 320);
  const brush = canvas.getContext("2d");
  // Kerning is left out of the part, and drawings do not use it.
  brush.fontKerning = "none";
  // Large, because a rasteriser's own hinting at small sizes looks at all glyphs of a font, not only at those drawn.
  brush.font = `160px "${family}"`;
  brush.fillText(text, 10, 220);
  return brush.getImageData(0, 0, 3200, 320).data;
}

/** How much of the ink of one picture is not where the other has it, 0 to 1. */
function difference(one: Uint8ClampedArray, other: Uint8ClampedArray): number {
  let ink = 0;
  let apart = 0;
  for (let at = 3; at < one.length; at += 4) {
    ink += Math.max(one[at] ?? 0, other[at] ?? 0);
    apart += Math.abs((one[at] ?? 0) - (other[at] ?? 0));
  }
  return apart / ink;
}
