import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { COLOUR_CODES } from "../../../src/graph/schema/values.ts";
import { channels, contrast, greyOf, luminance } from "../../../src/sheets/writers/colour-math.ts";
import {
  impliedTracer,
  PIGMENTS,
  ROLES,
  resolveInk,
  type Theme,
  UNKNOWN_PIGMENT,
} from "../../../src/sheets/writers/palette.ts";

const THEMES = ["paper", "workshop", "print", "print-grey"] as const satisfies readonly Theme[];

describe("contrast", () => {
  // Source: W3C, Web Content Accessibility Guidelines 2.2, definitions of relative luminance and contrast ratio:
  // black on white is 21:1, a colour on itself 1:1.
  test("follows the definition of WCAG 2.2", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
    expect(contrast("#ffffff", "#000000")).toBeCloseTo(21, 9);
    expect(contrast("#777777", "#777777")).toBe(1);
    // From the definition by hand: 0.2126 for full red, so (1.05) / (0.2626).
    expect(contrast("#ff0000", "#ffffff")).toBeCloseTo(1.05 / 0.2626, 9);
    expect(() => luminance("red")).toThrow(RangeError);
  });

  test("a grey is as light as its colour", () => {
    for (const hex of Object.values(PIGMENTS)) {
      expect(Math.abs(luminance(greyOf(hex)) - luminance(hex))).toBeLessThan(0.01);
    }
  });
});

describe("every theme can be read", () => {
  for (const theme of THEMES) {
    const roles = ROLES[theme];
    for (const ground of [roles.paper, roles.panel]) {
      test.each(["ink", "quiet", "accent", "danger", "fault", "weak", "tidy"] as const)(
        `${theme}: text in %s on ${ground} has 4.5:1 (WCAG 2.2, 1.4.3)`,
        (role) => expect(contrast(roles[role], ground)).toBeGreaterThanOrEqual(4.5),
      );
      test(`${theme}: rules on ${ground} have 3:1 (WCAG 2.2, 1.4.11)`, () => {
        expect(contrast(roles.line, ground)).toBeGreaterThanOrEqual(3);
      });
    }
    test(`${theme}: words in paper on accent have 4.5:1`, () => {
      expect(contrast(roles.paper, roles.accent)).toBeGreaterThanOrEqual(4.5);
    });
    test(`${theme}: a wire's outline shows its shape on the page, and light wires show inside it`, () => {
      expect(contrast(roles.ink, roles.paper)).toBeGreaterThanOrEqual(7);
    });
  }
});

describe("pigments", () => {
  test("no two of them look alike", () => {
    const codes = COLOUR_CODES.filter((code) => impliedTracer(code) === null);
    for (const one of codes) {
      for (const other of codes) {
        if (one >= other) continue;
        expect(distance(PIGMENTS[one], PIGMENTS[other]), `${one} and ${other}`).toBeGreaterThan(20);
      }
    }
  });

  test("protective earth is green with yellow; a colour nobody knows has its own", () => {
    expect(resolveInk("wire:GNYE", "paper")).toBe(PIGMENTS.GN);
    expect(impliedTracer("GNYE")).toBe("YE");
    expect(impliedTracer("GN")).toBeNull();
    expect(resolveInk("wire:", "paper")).toBe(UNKNOWN_PIGMENT);
    expect(resolveInk("wire:constructor", "paper")).toBe(UNKNOWN_PIGMENT);
    expect(Object.values(PIGMENTS)).not.toContain(UNKNOWN_PIGMENT);
    expect(resolveInk("none", "paper")).toBeNull();
  });

  test("a black-and-white print holds no colour", () => {
    for (const code of COLOUR_CODES) {
      const [red, green, blue] = channels(resolveInk(`wire:${code}`, "print-grey") ?? "");
      expect([red, green]).toEqual([green, blue]);
    }
  });
});

test("theme.css says what the palette says", () => {
  const css = readFileSync(new URL("../../../src/editor/theme.css", import.meta.url), "utf8");
  const block = (selector: string): Record<string, string> => {
    const start = css.indexOf(selector);
    expect(start, selector).toBeGreaterThanOrEqual(0);
    const body = css.slice(css.indexOf("{", start) + 1, css.indexOf("}", start));
    return Object.fromEntries(
      [...body.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [name, value]),
    );
  };
  expect(block('[data-theme="paper"]')).toEqual(ROLES.paper);
  expect(block('[data-theme="workshop"]')).toEqual(ROLES.workshop);
  const wires = block(":root {");
  expect(wires).toEqual({
    ...Object.fromEntries(Object.entries(PIGMENTS).map(([code, hex]) => [`wire-${code}`, hex])),
    "wire-unknown": UNKNOWN_PIGMENT,
  });
});

/** CIE 1976 colour difference in L*a*b* under D65 (from memory); 2.3 is about what an eye just notices. */
function distance(one: string, other: string): number {
  const [a, b] = [lab(one), lab(other)];
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

function lab(hex: string): [number, number, number] {
  const [r, g, b] = channels(hex).map((v) => (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4)) as [
    number,
    number,
    number,
  ];
  const f = (t: number): number => (t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27) * (t / 116) + 16 / 116);
  const x = f((0.4124 * r + 0.3576 * g + 0.1805 * b) / 0.9505);
  const y = f(0.2126 * r + 0.7152 * g + 0.0722 * b);
  const z = f((0.0193 * r + 0.1192 * g + 0.9505 * b) / 1.089);
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
