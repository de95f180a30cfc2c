import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Drawing, Primitive } from "../../../src/layout/drawing.ts";
import { printable } from "../../../src/layout/text/printable.ts";
import { PIGMENTS, ROLES } from "../../../src/sheets/writers/palette.ts";
import { writeSvg } from "../../../src/sheets/writers/svg.ts";
import { readTypeface } from "../../../src/tasks/typeface.mjs";
import { oneText, SPECIMEN } from "./specimen.ts";
import { readXml } from "./xml.ts";

const HOSTILE = [
  '</text><script>alert("x")</script>',
  "<![CDATA[ ]]> &amp; &#x0; &entity; <!-- -->",
  `" onload="alert(1)" x='`,
  "null \u0000 escape \u001b bell \u0007 break \n tab \t half \ud800 last \uffff",
  "javascript:alert(1) url(http://example.invalid/x)",
];

describe("writeSvg", () => {
  test.each(HOSTILE)("writes %j as text and nothing else", (text) => {
    const elements = readXml(writeSvg(oneText(text), { theme: "paper", title: text }));
    expect(elements.map((element) => element.name)).toEqual(["svg", "title", "rect", "text"]);
    expect(elements.find((element) => element.name === "text")?.text).toBe(printable(text));
    expect(elements.find((element) => element.name === "title")?.text).toBe(printable(text));
    for (const element of elements) expect(Object.keys(element.attributes).join()).not.toMatch(/\bon/);
  });

  test("is well-formed whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const elements = readXml(writeSvg(oneText(`x${text}`), { theme: "workshop", title: text }));
        expect(elements.find((element) => element.name === "text")?.text).toBe(printable(`x${text}`));
      }),
      { seed: 60757 },
    );
  });

  test("says what it is, resolves inks by theme, and asks for nothing outside itself", () => {
    const paper = writeSvg(SPECIMEN, { theme: "paper", title: "Wren" });
    const workshop = writeSvg(SPECIMEN, { theme: "workshop", title: "Wren" });
    const [svg, title] = readXml(paper);
    expect(svg?.attributes.role).toBe("img");
    expect(svg?.attributes.viewBox).toBe("0 0 340 200");
    expect(title?.text).toBe("Wren");
    expect(paper).toContain(ROLES.paper.ink);
    expect(workshop).toContain(ROLES.workshop.ink);
    expect(workshop).not.toContain(ROLES.paper.ink);
    for (const file of [paper, workshop]) {
      expect(file).toContain(PIGMENTS.YE);
      expect(file).not.toMatch(/(href|src|url\()/);
    }
  });

  test("states its size on paper where it is asked to", () => {
    const [svg] = readXml(writeSvg(SPECIMEN, { theme: "print", title: "Wren", unit_mm: 0.25 }));
    expect(svg?.attributes.width).toBe("85mm");
    expect(svg?.attributes.height).toBe("50mm");
  });

  test("carries the typeface, cut down, where it is given", () => {
    const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };
    const file = writeSvg(SPECIMEN, { theme: "paper", title: "Wren", typeface });
    const fonts = [...file.matchAll(/url\(data:font\/ttf;base64,([^)]+)\)/g)];
    expect(fonts).toHaveLength(2);
    expect(file.length).toBeLessThan(40_000);
    expect(file).not.toContain("textLength");
  });

  test("holds every shape of a nested group", () => {
    const names = readXml(writeSvg(SPECIMEN, { theme: "paper", title: "" })).map((element) => element.name);
    const count = (name: string) => names.filter((found) => found === name).length;
    expect([count("g"), count("circle"), count("path"), count("line"), count("text")]).toEqual([
      2, 2, 2, 3, 7,
    ]);
  });

  test("refuses a coordinate that is not a number", () => {
    const line: Primitive = {
      kind: "line",
      x1: Number.NaN,
      y1: 0,
      x2: 1,
      y2: 1,
      stroke: { colour: "ink", width: 1 },
    };
    const drawing: Drawing = { x: 0, y: 0, width: 1, height: 1, items: [line] };
    expect(() => writeSvg(drawing, { theme: "paper", title: "" })).toThrow(RangeError);
  });
});
