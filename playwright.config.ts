import { defineConfig } from "@playwright/test";
import { chromiumFlags, findChromium } from "./src/tasks/chromium.mjs";

const port = 4199;
const executablePath = await findChromium();

export default defineConfig({
  testDir: "tests/browser",
  testMatch: "**/*.spec.ts",
  outputDir: "test-results",
  // Each worker has a browser of its own, with its own storage and clipboard: no test sees another's.
  workers: 2,
  fullyParallel: true,
  retries: 0,
  forbidOnly: true,
  // Generous, for a machine that is slow or busy: a test that passes never waits for them.
  timeout: 120_000,
  globalTimeout: 25 * 60_000,
  expect: { timeout: 15_000 },
  use: {
    baseURL: `http://127.0.0.1:${port}/`,
    viewport: { width: 1280, height: 800 },
    trace: "off",
    video: "off",
    screenshot: "off",
    // Each test would else fetch the whole editor once more to keep it; the offline tests allow it.
    serviceWorkers: "block",
    contextOptions: { reducedMotion: "reduce" },
    launchOptions: { ...(executablePath ? { executablePath } : {}), args: [...chromiumFlags] },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --port ${port} --strictPort`,
    url: `http://127.0.0.1:${port}/`,
    reuseExistingServer: false,
    timeout: 30_000,
  },
});
