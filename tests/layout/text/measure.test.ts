import { readFileSync } from "node:fs";
import fc from "fast-check";
import { jsPDF } from "jspdf";
import { beforeAll, describe, expect, test } from "vitest";
import { covered, fitText, textWidth, type Weight } from "../../../src/layout/text/measure.ts";
import { printable } from "../../../src/layout/text/printable.ts";
import { advancesModule } from "../../../src/tasks/make-advances.mjs";
import { readTrueType } from "../../../src/tasks/true-type.mjs";
import { readTypeface } from "../../../src/tasks/typeface.mjs";

const MUST_HAVE =
  "ABCXYZabcxyz0123456789 ÄÖÜßéñçøåæŁłŠšőűğİı ΑΒΓΔΦΨΩαβγδφψωάέ АБВЖЩЫЯабвжщыяЁё ΩΩ²³°±→←µμ×÷–—…≤≥−′″½•·№□■●√≈";
const LINES = [
  "A4 constant feed RD/BK 0.75 mm² 1.25 m",
  "−40…105 °C ±0.5 Ω → X2.7 ≤ 15 A × 3 ÷ 2",
  "Ηχείο εμπρός αριστερά +",
  "Задний ход, лампа 21 Вт",
  "Žluťoučký kůň, Größe, señal, tête",
  "AVATAR To Wa Ty fi ffl",
];

describe("the table of advances", () => {
  test("is what the generator makes of the typeface today", () => {
    const file = readFileSync(new URL("../../../src/layout/text/advances.ts", import.meta.url), "utf8");
    expect(file).toBe(advancesModule());
  });

  test.each(["regular", "bold"] as const)(
    "rests on a static TrueType file with all digits alike (%s)",
    (weight) => {
      const font = readTrueType(readTypeface(weight));
      expect(font.outlines).toBe("truetype");
      expect(font.variable).toBe(false);
      expect(new Set([..."0123456789"].map((digit) => font.advances.get(digit.charCodeAt(0)))).size).toBe(1);
    },
  );

  test("covers what harness papers are written with", () => {
    expect(covered(MUST_HAVE)).toEqual([]);
    expect(covered("spare → 予備 🔌 → 予")).toEqual(["予", "備", "🔌"]);
  });
});

describe("textWidth", () => {
  // An independent measure: jsPDF reads the same file with its own TrueType reader.
  let pdf: jsPDF;
  beforeAll(() => {
    pdf = new jsPDF({ unit: "pt" });
    for (const weight of ["regular", "bold"] as const) {
      pdf.addFileToVFS(`${weight}.ttf`, Buffer.from(readTypeface(weight)).toString("base64"));
      pdf.addFont(`${weight}.ttf`, "sheet", weight === "bold" ? "bold" : "normal");
    }
  });
  const width = (line: string, size: number, weight: Weight) =>
    pdf
      .setFont("sheet", weight === "bold" ? "bold" : "normal")
      .setFontSize(size)
      .getTextWidth(line);

  test.each(LINES)("agrees with jsPDF within 0.5 %%: %s", (line) => {
    for (const weight of ["regular", "bold"] as const) {
      for (const size of [6, 11, 40]) {
        expect(Math.abs(textWidth(line, size, weight) / width(line, size, weight) - 1)).toBeLessThan(0.005);
      }
    }
  });

  test("adds up, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), fc.string({ unit: "grapheme" }), (a, b) => {
        const sum = textWidth(a, 10, "bold") + textWidth(b, 10, "bold");
        expect(textWidth(a + b, 10, "bold")).toBeCloseTo(sum, 6);
      }),
      { seed: 60757 },
    );
  });

  test("gives an unknown glyph room", () => {
    expect(textWidth("予", 10)).toBe(10);
    expect(textWidth("\u0e01", 10)).toBeGreaterThan(3);
    expect(textWidth("🔌", 10)).toBe(10);
    expect(textWidth("", 10)).toBe(0);
  });
});

describe("fitText", () => {
  test("leaves a text that fits, to the last unit", () => {
    for (const line of LINES) expect(fitText(line, 11, "regular", textWidth(line, 11))).toBe(line);
  });

  test("cuts with an ellipsis, never within a character, and no space before it", () => {
    expect(fitText("constant feed", 10, "regular", textWidth("constant …", 10))).toBe("constant…");
    expect(fitText("🔌🔌🔌", 10, "regular", 20)).toBe("🔌…");
    expect(fitText("constant feed", 10, "regular", 2)).toBe("");
  });

  test("never exceeds the width and keeps a beginning", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "binary" }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (text, room) => {
          const fitted = fitText(text, 9, "regular", room);
          expect(textWidth(fitted, 9)).toBeLessThanOrEqual(room + 1e-6);
          expect(printable(text).startsWith(fitted.replace(/…$/, "")) || fitted === printable(text)).toBe(
            true,
          );
        },
      ),
      { seed: 60757 },
    );
  });
});

describe("printable", () => {
  test("composes accents, joins lines and takes out what cannot be drawn", () => {
    expect(printable("plain text")).toBe("plain text");
    expect(printable("e\u0301")).toBe("é");
    expect(printable("two\r\nlines\tand a tab")).toBe("two lines and a tab");
    expect(printable("a\u0000b\u001bc\u202ed\ud800e\u200bf\ufffe")).toBe("abcdef");
  });
});
