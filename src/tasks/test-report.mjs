/**
 * What one test runner has to say.
 * @typedef {{ passed: number, failures: string[], skipped: string[] }} Tally
 *
 * The parts of the two runners' JSON reports that are read.
 * @typedef {{ fullName: string, status: string, failureMessages?: string[] | null }} UnitTest
 * @typedef {{ name: string, status: string, message?: string, assertionResults: UnitTest[] }} UnitFile
 * @typedef {{ testResults: UnitFile[] }} UnitReport
 * @typedef {{ message?: string }} BrowserError
 * @typedef {{ status?: string, errors?: BrowserError[] }} BrowserResult
 * @typedef {{ status: string, results: BrowserResult[] }} BrowserTest
 * @typedef {{ title: string, file?: string, specs?: BrowserSpec[], suites?: BrowserSuite[] }} BrowserSuite
 * @typedef {{ title: string, tests: BrowserTest[] }} BrowserSpec
 * @typedef {{ suites: BrowserSuite[], errors?: BrowserError[] }} BrowserReport
 */

/** How a lost browser shows in Playwright's messages. */
const BROWSER_DIED =
  /browser has been closed|Target (page, context or browser|crashed|closed)|Page crashed|browserType\.launch|Browser closed|Protocol error \([^)]*\): .*closed/i;

/**
 * @param {UnitReport} report vitest's JSON
 * @returns {Tally} a file that could not be loaded is one failure
 */
export function tallyUnit(report) {
  /** @type {Tally} */
  const tally = { passed: 0, failures: [], skipped: [] };
  for (const file of report.testResults) {
    if (file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed")) {
      tally.failures.push(`${file.name}\n${file.message ?? "could not be run"}`);
    }
    for (const test of file.assertionResults) {
      const name = `${file.name} > ${test.fullName}`;
      if (test.status === "passed") tally.passed++;
      else if (test.status === "failed") {
        tally.failures.push(`${name}\n${(test.failureMessages ?? []).join("\n")}`);
      } else tally.skipped.push(name);
    }
  }
  return tally;
}

/**
 * @param {BrowserReport} report Playwright's JSON
 * @returns {Tally} a test that passed only when tried again is a failure; so is an error outside any test
 */
export function tallyBrowser(report) {
  /** @type {Tally} */
  const tally = { passed: 0, failures: [], skipped: [] };
  for (const error of report.errors ?? [])
    tally.failures.push(plain(error.message ?? "an error without words"));
  /** @param {BrowserSuite} suite @param {string} above */
  const visit = (suite, above) => {
    const path = above === "" ? suite.title : `${above} > ${suite.title}`;
    for (const spec of suite.specs ?? []) {
      for (const test of spec.tests) {
        const name = `${path} > ${spec.title}`;
        if (test.status === "expected") tally.passed++;
        else if (test.status === "skipped") tally.skipped.push(name);
        else {
          const words = test.results
            .flatMap((result) => result.errors ?? [])
            .map((error) => error.message ?? "");
          tally.failures.push(`${name}\n${plain(words.join("\n"))}`);
        }
      }
    }
    for (const inner of suite.suites ?? []) visit(inner, path);
  };
  for (const suite of report.suites) visit(suite, "");
  return tally;
}

/**
 * Whether failures say that the browser itself went away, rather than that the page was wrong.
 * @param {readonly string[]} failures
 */
export function browserDied(failures) {
  return failures.some((failure) => BROWSER_DIED.test(failure));
}

/**
 * @param {readonly Tally[]} tallies
 * @returns {{ line: string, ok: boolean }} the closing line; nothing passed is not a success
 */
export function closing(tallies) {
  const passed = tallies.reduce((sum, tally) => sum + tally.passed, 0);
  const failed = tallies.reduce((sum, tally) => sum + tally.failures.length, 0);
  return { line: `${passed} passed, ${failed} failed`, ok: failed === 0 && passed > 0 };
}

/**
 * Without terminal colours, and without what the browser process itself says into its log.
 * @param {string} text
 */
function plain(text) {
  return text
    .replace(new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, "g"), "")
    .split("\n")
    .filter((line) => !/^\s*(- )?\[pid=\d+\]/.test(line))
    .join("\n");
}
