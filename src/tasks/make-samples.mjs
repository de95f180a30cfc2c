import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { register } from "tsx/esm/api";
import { isMain, root } from "./process.mjs";

/**
 * `node src/tasks/make-samples.mjs` writes samples/*.harness.json from samples/make. Parts stay where the files
 * have them; `--arrange` places them anew.
 */
if (isMain(import.meta.url)) {
  register();
  const { makeSample, SAMPLE_IDS } = await import("../../samples/make/index.ts");
  /** @param {string} id */
  const fileOf = (id) => join(root, "samples", `${id}.harness.json`);
  /** @param {string} id */
  const read = (id) => (existsSync(fileOf(id)) ? readFileSync(fileOf(id), "utf8") : null);
  for (const id of SAMPLE_IDS) {
    const text = await makeSample(id, read, process.argv.includes("--arrange"));
    if (text === read(id)) continue;
    writeFileSync(fileOf(id), text);
    console.log(`Wrote ${fileOf(id)}.`);
  }
  process.exit();
}
