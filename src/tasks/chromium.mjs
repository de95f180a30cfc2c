import { existsSync } from "node:fs";
import { answers, run } from "./process.mjs";

const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/**
 * Flags for a Chromium that runs as root, without a graphics card, and keeps to itself.
 * @type {readonly string[]}
 */
export const chromiumFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const HOW_TO_GET_ONE =
  "The browser tests need Chromium and none was found. Install it with your system's package manager " +
  "(Debian: `apt-get install chromium` as root), or run `npx playwright install chromium`, or set CHROMIUM to " +
  "the path of one that you have, then run the command again.";

/**
 * The browser that tests and pictures use: the one named by CHROMIUM, or one in a usual place, or the one
 * that Playwright keeps.
 * @returns {Promise<string | null>} its path
 * @throws Error if CHROMIUM names something that does not run
 */
export async function findChromium() {
  const asked = process.env.CHROMIUM;
  if (asked) {
    if (!answers(asked))
      throw new Error(`CHROMIUM is set to ${asked}, and that does not run. Correct or unset it.`);
    return asked;
  }
  const { chromium } = await import("@playwright/test");
  for (const place of [...USUAL_PLACES, chromium.executablePath()]) {
    if (existsSync(place) && answers(place)) return place;
  }
  return null;
}

/**
 * Finds Chromium, or installs it where that is possible without asking anybody: on a Debian-like system, as root.
 * @returns {Promise<string>} its path
 * @throws Error that says what to do
 */
export async function needChromium() {
  const found = await findChromium();
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log("Installing Chromium for the browser tests.");
    const env = { DEBIAN_FRONTEND: "noninteractive" };
    const install = ["install", "-y", "--no-install-recommends", "chromium"];
    let result = await run("apt-get", install, { env, quiet: true });
    if (result.code !== 0) {
      await run("apt-get", ["update"], { env, quiet: true });
      result = await run("apt-get", install, { env, quiet: true });
    }
    if (result.code !== 0) console.error(result.output.split("\n").slice(-15).join("\n"));
    const installed = await findChromium();
    if (installed) return installed;
  }
  throw new Error(HOW_TO_GET_ONE);
}
