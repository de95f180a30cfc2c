import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { isMain, root, run } from "./process.mjs";

const STAMP = join(root, "node_modules", ".pigtail-set-up");

/**
 * Makes the clone ready to run: the packages of the lock file, for browser tests a Chromium, and for the solver's tests
 * ngspice. Does nothing where all is in place already.
 *
 * @param {{ browser?: boolean, ngspice?: boolean }} [need]
 * @throws Error that says what to do
 */
export async function setUp(need = {}) {
  await installPackages();
  if (need.browser) {
    const { needChromium } = await import("./chromium.mjs");
    await needChromium();
  }
  if (need.ngspice) {
    const { offerNgspice } = await import("./ngspice.mjs");
    await offerNgspice();
  }
}

async function installPackages() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  if (existsSync(STAMP) && readFileSync(STAMP, "utf8") === lock) return;
  // `npm ci` throws node_modules away; where there is one, only what changed is brought up to date.
  const command = existsSync(join(root, "node_modules")) ? "install" : "ci";
  console.log("Installing packages.");
  const result = await run("npm", [command, "--include=dev", "--no-audit", "--no-fund", "--loglevel=error"]);
  if (result.code !== 0) {
    throw new Error(
      `\`npm ${command}\` failed; its own words are above. Check the network, then run the command again.`,
    );
  }
  const after = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  writeFileSync(STAMP, after);
}

if (isMain(import.meta.url)) {
  try {
    await setUp({ browser: process.argv.includes("--browser") });
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
