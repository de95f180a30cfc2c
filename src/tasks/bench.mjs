import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root } from "./process.mjs";
import { setUp } from "./set-up.mjs";

/**
 * `npm run bench`: every `tests/bench/*.bench.ts` prints the lines that its `bench()` returns.
 * Words choose among them: `npm run bench -- route`.
 */
const words = process.argv.slice(2);
await setUp();
const { register } = await import("tsx/esm/api");
register();

const folder = join(root, "tests", "bench");
const files = (existsSync(folder) ? readdirSync(folder) : [])
  .filter((name) => name.endsWith(".bench.ts"))
  .filter((name) => words.length === 0 || words.some((word) => name.includes(word)))
  .sort();
if (files.length === 0) {
  console.error(`No benchmark in tests/bench is called that: ${words.join(" ")}`);
  process.exitCode = 1;
}
for (const name of files) {
  console.log(`\n${name.replace(".bench.ts", "")}`);
  try {
    const { bench } = await import(pathToFileURL(join(folder, name)).href);
    for (const line of await bench()) console.log(`  ${line}`);
  } catch (error) {
    console.error(error);
    process.exitCode = 1;
  }
}
