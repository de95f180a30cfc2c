import { expect, test } from "vitest";
import { browserDied, closing, tallyBrowser, tallyUnit } from "../../src/tasks/test-report.mjs";

test("a unit report is counted test by test, and a file that cannot be loaded is one failure", () => {
  const tally = tallyUnit({
    testResults: [
      {
        name: "a.test.ts",
        status: "failed",
        assertionResults: [
          { fullName: "one", status: "passed" },
          { fullName: "two", status: "failed", failureMessages: ["expected 1 to be 2"] },
          { fullName: "three", status: "pending" },
        ],
      },
      { name: "b.test.ts", status: "failed", message: "SyntaxError", assertionResults: [] },
    ],
  });
  expect(tally.passed).toBe(1);
  expect(tally.failures).toEqual(["a.test.ts > two\nexpected 1 to be 2", "b.test.ts\nSyntaxError"]);
  expect(tally.skipped).toEqual(["a.test.ts > three"]);
});

test("a browser report is counted through nested suites; a flaky test and an error outside tests fail", () => {
  const tally = tallyBrowser({
    errors: [{ message: "web server did not start" }],
    suites: [
      {
        title: "a.spec.ts",
        specs: [{ title: "opens", tests: [{ status: "expected", results: [] }] }],
        suites: [
          {
            title: "joining",
            specs: [
              {
                title: "sometimes",
                tests: [
                  {
                    status: "flaky",
                    results: [{ errors: [{ message: "\u001b[31mlate\u001b[39m\n[pid=12][err] noise" }] }],
                  },
                ],
              },
              { title: "never", tests: [{ status: "skipped", results: [] }] },
            ],
          },
        ],
      },
    ],
  });
  expect(tally.passed).toBe(1);
  expect(tally.failures).toEqual(["web server did not start", "a.spec.ts > joining > sometimes\nlate"]);
  expect(tally.skipped).toEqual(["a.spec.ts > joining > never"]);
});

test("a lost browser is told from a wrong page", () => {
  expect(browserDied(["page.click: Target page, context or browser has been closed"])).toBe(true);
  expect(browserDied(["browserType.launch: Failed to launch"])).toBe(true);
  expect(browserDied(["expect(locator).toBeVisible() failed"])).toBe(false);
});

test("the closing line sums, and nothing run is not a success", () => {
  const good = { passed: 2, failures: [], skipped: ["x"] };
  expect(closing([good, good])).toEqual({ line: "4 passed, 0 failed", ok: true });
  expect(closing([good, { passed: 1, failures: ["y"], skipped: [] }])).toEqual({
    line: "3 passed, 1 failed",
    ok: false,
  });
  expect(closing([{ passed: 0, failures: [], skipped: [] }])).toEqual({
    line: "0 passed, 0 failed",
    ok: false,
  });
});
