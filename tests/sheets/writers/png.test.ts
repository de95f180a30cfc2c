import { createCanvas, loadImage } from "@napi-rs/canvas";
import { describe, expect, test } from "vitest";
import { writePng } from "../../../src/cli/png.ts";
import type { Drawing, Primitive } from "../../../src/layout/drawing.ts";
import { PIGMENTS, ROLES, resolveInk, type Theme } from "../../../src/sheets/writers/palette.ts";
import { pngSize } from "../../../src/sheets/writers/png.ts";
import { oneText, SPECIMEN } from "./specimen.ts";

async function pixels(drawing: Drawing, theme: Theme, pixelsPerUnit: number) {
  const image = await loadImage(Buffer.from(await writePng(drawing, { theme, pixelsPerUnit })));
  const canvas = createCanvas(image.width, image.height);
  const brush = canvas.getContext("2d");
  brush.drawImage(image, 0, 0);
  const { data } = brush.getImageData(0, 0, image.width, image.height);
  const at = (x: number, y: number): string => {
    const start = 4 * (Math.floor(y * pixelsPerUnit) * image.width + Math.floor(x * pixelsPerUnit));
    return `#${[...data.slice(start, start + 3)].map((part) => part.toString(16).padStart(2, "0")).join("")}`;
  };
  return { width: image.width, height: image.height, at };
}

describe("writePng", () => {
  test.each(["paper", "workshop", "print", "print-grey"] as const)(
    "every shape has its colour in %s",
    async (theme) => {
      const picture = await pixels(SPECIMEN, theme, 3);
      expect([picture.width, picture.height]).toEqual([1020, 600]);
      const ink = (name: Parameters<typeof resolveInk>[0]) => resolveInk(name, theme);
      expect(picture.at(2, 2)).toBe(ink("paper"));
      expect(picture.at(80, 170)).toBe(ink("panel"));
      expect(picture.at(144, 64)).toBe(ink("wire:RD")); // within the first dash
      expect(picture.at(152, 64)).toBe(ink("wire:YE")); // within the gap after it
      expect(picture.at(152, 61.5)).toBe(ink("ink")); // the outline
      expect(picture.at(260, 140)).toBe(ink("wire:BU"));
      expect(picture.at(220, 168)).toBe(ink("wire:GN"));
      expect(picture.at(270, 170)).toBe(ink("danger")); // circle in a group
      expect(picture.at(300, 160.2)).toBe(ink("accent")); // ring in a group in a group
      expect(picture.at(300, 170)).toBe(ink("paper")); // and its open middle
    },
  );

  test("text is drawn in the typeface, a missing glyph as a box", async () => {
    const drawn = async (text: string) =>
      Buffer.from(await writePng(oneText(text), { theme: "print", pixelsPerUnit: 2 }));
    const [blank, omega, missing, box] = await Promise.all(["", "Ω", "予", "□"].map(drawn));
    expect(omega?.equals(blank ?? Buffer.of())).toBe(false);
    expect(missing?.equals(box ?? Buffer.of())).toBe(true);
    expect(omega?.equals(box ?? Buffer.of())).toBe(false);
  });

  test("a drawing that does not start at the origin is moved there", async () => {
    const square: Primitive = { kind: "rectangle", x: -90, y: 510, width: 10, height: 10, fill: "wire:RD" };
    const picture = await pixels({ x: -100, y: 500, width: 40, height: 30, items: [square] }, "paper", 2);
    expect(picture.at(15, 15)).toBe(PIGMENTS.RD);
    expect(picture.at(25, 15)).toBe(ROLES.paper.paper);
  });
});

describe("pngSize", () => {
  const drawing = (width: number, height: number): Drawing => ({ x: 0, y: 0, width, height, items: [] });

  test("is what was asked for, within what a canvas can hold", () => {
    expect(pngSize(drawing(300, 200), 3)).toEqual({ width: 900, height: 600, pixelsPerUnit: 3 });
    const long = pngSize(drawing(40_000, 100), 3);
    expect(long.width).toBe(16_384);
    const huge = pngSize(drawing(20_000, 20_000), 4);
    expect(huge.width * huge.height).toBeLessThanOrEqual(100_020_000);
  });

  test.each([
    [0, 10, 1],
    [10, 10, 0],
    [10, 10, Number.NaN],
    [10, Number.POSITIVE_INFINITY, 1],
  ])("refuses %d × %d at %d", (width, height, scale) => {
    expect(() => pngSize(drawing(width, height), scale)).toThrow(RangeError);
  });
});
