import { extname } from "node:path";
import { apply } from "../graph/edits/apply.ts";
import type { Harness } from "../graph/harness.ts";
import { trace } from "../graph/trace.ts";
import { arrangeInNode } from "../layout/arrange/node.ts";
import { arrangementEdit, arrangeProblem } from "../layout/arrangement.ts";
import { makeScene } from "../layout/scene.ts";
import { check } from "../rules/check.ts";
import { diagramPicture, diagramSvg } from "../sheets/diagram-picture.ts";
import { writePapersPdf } from "../sheets/papers.ts";
import { readTypeface } from "../tasks/typeface.mjs";
import { oneOf, readArguments } from "./arguments.ts";
import { readHarness, writeWhole } from "./files.ts";
import { complain, EXIT, Unusable } from "./unusable.ts";

export const usage =
  "pigtail draw FILE -o OUT.(pdf|svg|png) [--size SIZE] [--portrait | --landscape] [--tiles | --one-page] [--grey]";

const SIZES = ["A4", "A3", "Letter", "Tabloid"] as const;
/** About 200 dots an inch at scale 1:1: reads well and still opens everywhere. */
const PIXELS_PER_UNIT = 2;

/**
 * Draws a harness: all papers as a PDF, or the diagram alone as SVG or PNG. Paper, orientation and fit are those
 * of the harness unless told. A harness that has unplaced parts is arranged first; the file is not changed.
 */
export async function run(given: readonly string[]): Promise<number> {
  const { values, positionals } = readArguments(
    given,
    {
      output: { type: "string", short: "o" },
      size: { type: "string" },
      portrait: { type: "boolean" },
      landscape: { type: "boolean" },
      tiles: { type: "boolean" },
      "one-page": { type: "boolean" },
      grey: { type: "boolean" },
    },
    { usage, least: 1, most: 1 },
  );
  const { output } = values;
  if (output === undefined) throw new Unusable(`Where to? Name a file with -o.\nUsage: ${usage}`);
  const kind = extname(output).toLowerCase();
  if (kind !== ".pdf" && kind !== ".svg" && kind !== ".png")
    throw new Unusable(`The drawing's name ends in .pdf, .svg or .png.\nUsage: ${usage}`);
  if (values.portrait && values.landscape) throw new Unusable("Portrait or landscape, not both.");
  if (values.tiles && values["one-page"]) throw new Unusable("Tiles or one page, not both.");
  const size = values.size === undefined ? undefined : oneOf("--size", values.size, SIZES);
  const harness = await arranged(readHarness(positionals[0]!).harness);
  if (!Object.keys(harness.parts).length)
    throw new Unusable("The harness has no parts: there is nothing to draw.");

  const { sheet } = harness.settings;
  const theme = values.grey ? "print-grey" : "print";
  const date = new Date();
  const traced = trace(harness);
  const source = { traced, findings: check(harness, traced), scene: makeScene(harness, traced) };
  const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };
  if (kind === ".svg") {
    writeWhole(output, diagramSvg(harness, source, date, { theme, typeface }));
  } else if (kind === ".png") {
    const { writePng } = await import("./png.ts");
    const drawing = diagramPicture(harness, source, date);
    writeWhole(output, await writePng(drawing, { theme, pixelsPerUnit: PIXELS_PER_UNIT }));
  } else {
    const options = {
      size: size ?? sheet.size,
      orientation: values.portrait ? "portrait" : values.landscape ? "landscape" : sheet.orientation,
      fit: values.tiles ? "tiles" : values["one-page"] ? "one-page" : sheet.fit,
      theme,
      date,
    } as const;
    const { bytes, missingGlyphs } = await writePapersPdf(harness, options, typeface, source);
    writeWhole(output, bytes);
    if (missingGlyphs.length)
      complain(`The typeface has no ${missingGlyphs.slice(0, 8).join(" ")}: a box stands in its place.`);
  }
  return EXIT.clean;
}

async function arranged(harness: Harness): Promise<Harness> {
  if (Object.values(harness.parts).every((part) => harness.layout.places[part.id])) return harness;
  const result = apply(harness, arrangementEdit(harness, await arrangeInNode(arrangeProblem(harness))));
  if (!result.ok) throw new Error(result.why);
  return result.harness;
}
