import { fileURLToPath } from "node:url";
import { expect, test } from "@playwright/test";
import { build } from "vite";
import { writePages } from "../../src/sheets/writers/pdf.ts";
import { writeSvg } from "../../src/sheets/writers/svg.ts";
import { readTypeface } from "../../src/tasks/typeface.mjs";
import { oneText, SPECIMEN } from "../sheets/writers/specimen.ts";

const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };

test("the browser's own XML reader takes an SVG with hostile texts, and runs nothing of it", async ({
  page,
}) => {
  const text = `</text><script>document.title = "run"</script> & <![CDATA[ ]]> &x; " ' \u0000`;
  const file = writeSvg(oneText(text), { theme: "paper", title: text, typeface });
  await page.goto("./");
  const read = await page.evaluate((svg) => {
    const parsed = new DOMParser().parseFromString(svg, "image/svg+xml");
    return {
      wrong: parsed.querySelector("parsererror")?.textContent ?? null,
      scripts: parsed.querySelectorAll("script").length,
      text: parsed.querySelector("text")?.textContent,
    };
  }, file);
  expect(read).toEqual({ wrong: null, scripts: 0, text: text.replace("\u0000", "") });
});

test("an SVG that carries its typeface shows it", async ({ page }) => {
  const file = writeSvg(SPECIMEN, { theme: "paper", title: "Wren", typeface });
  await page.setContent(file.replace(/^<\?xml[^>]*>/, ""));
  const widths = await page.evaluate(async () => {
    await document.fonts.ready;
    const faces = [...document.fonts].map((face) => face.status);
    const text = [...document.querySelectorAll("text")].find(
      (found) => found.textContent === "A4 constant feed",
    );
    return { faces, width: text?.getComputedTextLength() };
  });
  expect(widths.faces).toEqual(["loaded", "loaded"]);
  const { textWidth } = await import("../../src/layout/text/measure.ts");
  expect(Math.abs((widths.width ?? 0) / textWidth("A4 constant feed", 11) - 1)).toBeLessThan(0.01);
});

test("the browser writes the same PDF as Node, and a PNG with the drawing's colours", async ({ page }) => {
  const bundled = await build({
    configFile: false,
    logLevel: "error",
    resolve: {
      alias: Object.fromEntries(
        ["html2canvas", "canvg", "dompurify"].map((name) => [
          name,
          fileURLToPath(new URL("../../src/tasks/left-out.mjs", import.meta.url)),
        ]),
      ),
    },
    build: {
      write: false,
      minify: false,
      lib: {
        entry: fileURLToPath(new URL("./writers-in-page.ts", import.meta.url)),
        formats: ["iife"],
        name: "writers",
      },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const [output] = [bundled].flat();
  if (!output || !("output" in output)) throw new Error("nothing was bundled");
  await page.goto("./");
  await page.addScriptTag({ content: output.output[0].code });
  const files = {
    regular: Buffer.from(typeface.regular).toString("base64"),
    bold: Buffer.from(typeface.bold).toString("base64"),
  };
  const made = await page.evaluate(
    ([drawing, fonts]) => {
      const { pdfBase64, pngPixel } = (
        globalThis as unknown as { writers: typeof import("./writers-in-page.ts") }
      ).writers;
      return Promise.all([
        pdfBase64(drawing, fonts),
        pngPixel(drawing, 260, 140),
        pngPixel(drawing, 220, 168),
      ]);
    },
    [SPECIMEN, files] as const,
  );
  const { bytes } = await writePages(
    [{ width_mm: 148, height_mm: 105, layers: [{ drawing: SPECIMEN, x_mm: 10, y_mm: 10, unit_mm: 0.25 }] }],
    typeface,
    { theme: "print", title: "Wren", created: new Date(0) },
  );
  expect(Buffer.from(made[0], "base64").equals(Buffer.from(bytes))).toBe(true);
  expect(made[1]).toBe("#1f63c2");
  expect(made[2]).toBe("#2c9a3a");
});
