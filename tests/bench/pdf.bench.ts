import { trace } from "../../src/graph/trace.ts";
import { makeScene } from "../../src/layout/scene.ts";
import { check } from "../../src/rules/check.ts";
import { makePapers, type PaperOptions, writePapersPdf } from "../../src/sheets/papers.ts";
import { readTypeface } from "../../src/tasks/typeface.mjs";
import { generate } from "./generate.ts";

const TARGET_MS = 2000;

/** Time and size of all papers as a PDF, from a harness that is already traced, checked and laid out. */
export async function bench(): Promise<string[]> {
  const typeface = { regular: readTypeface("regular"), bold: readTypeface("bold") };
  const options: PaperOptions = {
    size: "A3",
    orientation: "landscape",
    fit: "one-page",
    theme: "print",
    date: new Date(0),
  };
  // The first PDF of a session also loads the writer; a person waits for that once.
  const cold = performance.now();
  await writePapersPdf(generate(1), options, typeface);
  const lines = [`first PDF, one station: ${(performance.now() - cold).toFixed(0)} ms`];
  for (const count of [50, 200]) {
    const harness = generate(count);
    const traced = trace(harness);
    const source = { traced, scene: makeScene(harness, traced), findings: check(harness, traced) };
    const times: number[] = [];
    let bytes = 0;
    for (let run = 0; run < 3; run++) {
      const began = performance.now();
      bytes = (await writePapersPdf(harness, options, typeface, source)).bytes.length;
      times.push(performance.now() - began);
    }
    const pages = makePapers(harness, options, source).length;
    const median = times.sort((a, b) => a - b)[1]!;
    const target =
      count === 200 ? ` (target ${TARGET_MS} ms: ${median <= TARGET_MS ? "met" : "missed"})` : "";
    lines.push(
      `${count} wires: ${median.toFixed(0)} ms, ${(bytes / 1000).toFixed(0)} kB, ${pages} sheets A3${target}`,
    );
  }
  return lines;
}
