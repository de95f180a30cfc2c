import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runNode } from "./process.mjs";
import { setUp } from "./set-up.mjs";
import { browserDied, closing, tallyBrowser, tallyUnit } from "./test-report.mjs";

/**
 * `npm test`: unit, property and published tests, then the real browser on the built page.
 *
 *     npm test                    everything
 *     npm test -- rules           only the files whose path holds "rules", without the browser
 *     npm test -- rules --browser the same, browser tests of that name included
 */
const given = process.argv.slice(2);
const words = given.filter((word) => word !== "--browser");
const withBrowser = words.length === 0 || given.includes("--browser");

const UNIT_LIMIT_MIN = 20;
const BROWSER_LIMIT_MIN = 30;

/** @param {string} folder where reports are left @returns {Promise<import("./test-report.mjs").Tally>} */
async function unitTests(folder) {
  const file = join(folder, "unit.json");
  const args = ["run", "--reporter=default", "--reporter=json", `--outputFile.json=${file}`, ...words];
  if (words.length > 0) args.push("--passWithNoTests");
  const result = await runNode("vitest/vitest.mjs", args, { limit_min: UNIT_LIMIT_MIN });
  if (result.timedOut)
    return lost(`The unit tests did not end within ${UNIT_LIMIT_MIN} minutes and were stopped.`);
  if (!existsSync(file)) return lost("The unit tests ended without a report; what they said is above.");
  const tally = tallyUnit(JSON.parse(readFileSync(file, "utf8")));
  if (result.code !== 0 && tally.failures.length === 0) {
    tally.failures.push("vitest reported an error outside any test; its words are above.");
  }
  return tally;
}

/** @param {string} folder @returns {Promise<import("./test-report.mjs").Tally>} */
async function browserTests(folder) {
  const { build } = await import("./build.mjs");
  await build();
  const file = join(folder, "browser.json");
  const reporter = process.stdout.isTTY ? "line" : "list";
  const args = ["test", `--reporter=${reporter},json`, ...words];
  if (words.length > 0) args.push("--pass-with-no-tests");
  const result = await runNode("@playwright/test/cli.js", args, {
    env: { PLAYWRIGHT_JSON_OUTPUT_FILE: file },
    limit_min: BROWSER_LIMIT_MIN,
  });
  if (result.timedOut) {
    return lost(
      `The browser tests did not end within ${BROWSER_LIMIT_MIN} minutes and were stopped. Either the browser process died or a page hangs.`,
    );
  }
  if (!existsSync(file)) return lost("The browser tests ended without a report; what they said is above.");
  const tally = tallyBrowser(JSON.parse(readFileSync(file, "utf8")));
  if (result.code !== 0 && tally.failures.length === 0) {
    tally.failures.push("Playwright reported an error outside any test; its words are above.");
  }
  return tally;
}

/** @param {string} why @returns {import("./test-report.mjs").Tally} */
function lost(why) {
  return { passed: 0, failures: [why], skipped: [] };
}

/**
 * A step that throws is a failure with its words, so that the closing line is always printed.
 * @param {() => Promise<import("./test-report.mjs").Tally>} step
 */
async function attempt(step) {
  try {
    return await step();
  } catch (error) {
    return lost(error instanceof Error ? error.message : String(error));
  }
}

const folder = mkdtempSync(join(tmpdir(), "pigtail-test-"));
/** @type {import("./test-report.mjs").Tally[]} */
const tallies = [];
const ready = await attempt(async () => {
  await setUp({ browser: withBrowser, ngspice: true });
  return { passed: 0, failures: [], skipped: [] };
});
tallies.push(ready);
if (ready.failures.length === 0) {
  tallies.push(await attempt(() => unitTests(folder)));
  if (withBrowser) tallies.push(await attempt(() => browserTests(folder)));
}
rmSync(folder, { recursive: true, force: true });

for (const name of tallies.flatMap((tally) => tally.skipped)) console.log(`skipped: ${name}`);
for (const failure of tallies.flatMap((tally) => tally.failures)) console.log(`\nfailed: ${failure}`);
if (browserDied(tallies.flatMap((tally) => tally.failures))) {
  console.log(
    "\nThe browser process died or would not start, so its failures say little about the page itself.",
  );
  console.log("Run the command again; if it dies again, set CHROMIUM to another browser.");
}
const { line, ok } = closing(tallies);
if (!ok && line.startsWith("0 passed, 0"))
  console.log("No test was run. Check the words given to the command.");
console.log(`\n${line}`);
process.exitCode = ok ? 0 : 1;
