import { defineConfig } from "vitest/config";

/** What keeps something in its modules, or starts programs of its own, gets fresh modules for each file. */
const APART = ["tests/editor/**/*.test.{ts,tsx}", "tests/house/**/*.test.{ts,tsx}"];
/** The command line is made into one script first, and started in a process of its own. */
const CLI = "tests/cli/**/*.test.ts";
const NEVER = ["tests/browser/**", "node_modules/**"];

export default defineConfig({
  test: {
    environment: "node",
    // Generous, for a machine that is slow or busy.
    testTimeout: 120_000,
    projects: [
      { extends: true, test: { name: "apart", include: APART, exclude: NEVER } },
      {
        extends: true,
        test: { name: "cli", include: [CLI], exclude: NEVER, globalSetup: "tests/cli/bundled.ts" },
      },
      {
        extends: true,
        // All the rest are pure functions: loading them anew for each file would take longer than their tests.
        test: {
          name: "together",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [...NEVER, ...APART, CLI],
          isolate: false,
        },
      },
    ],
  },
});
