import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { root, runNode } from "./process.mjs";

/** What a build is made of, so that an older `dist` is known to be stale. */
const SOURCES = ["src", "samples", "package-lock.json", "vite.config.ts", "tsconfig.json"];

/**
 * Builds the editor into `dist`, unless what is there is newer than everything it is made of.
 * @throws Error with the builder's own words
 */
export async function build() {
  const made = statSync(join(root, "dist", "index.html"), { throwIfNoEntry: false });
  if (made && made.mtimeMs > Math.max(...SOURCES.map((source) => newest(join(root, source))))) return;
  console.log("Building the editor.");
  const result = await runNode("vite/bin/vite.js", ["build", "--logLevel", "warn"], { quiet: true });
  if (result.code !== 0) throw new Error(`The build failed:\n${result.output}`);
}

/**
 * When anything in a file or folder was last changed; a folder's own time tells of files taken away.
 * @param {string} path
 * @returns {number} milliseconds
 */
function newest(path) {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return Math.max(found.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}
