import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { chromium } from "@playwright/test";
import { build } from "vite";
import { chromiumFlags, needChromium } from "../../src/tasks/chromium.mjs";
import { serve } from "../../src/tasks/serve.mjs";

/** What the target of the first load is, bytes of JavaScript after gzip. */
const TARGET_BYTES = 300_000;

/**
 * What the built page asks for until it stands still, before anybody touches it: as a host that compresses would send
 * it. A fresh browser without anything kept, opened on a sample.
 */
export async function bench(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "pigtail-load-"));
  await build({
    configFile: fileURLToPath(new URL("../../vite.config.ts", import.meta.url)),
    logLevel: "error",
    build: { outDir: folder },
  });
  const server = await serve(folder, 0);
  const browser = await chromium.launch({ executablePath: await needChromium(), args: [...chromiumFlags] });
  const sizes = new Map<string, { count: number; plain: number; zipped: number }>();
  let script = 0;
  try {
    const context = await browser.newContext({ serviceWorkers: "block" });
    const page = await context.newPage();
    const bodies: Promise<void>[] = [];
    page.on("response", (response) => {
      bodies.push(
        response
          .body()
          .then((body) => {
            const kind = response.request().resourceType();
            const known = sizes.get(kind) ?? { count: 0, plain: 0, zipped: 0 };
            const zipped = gzipSync(body, { level: 9 }).length;
            if (kind === "script") script += zipped;
            sizes.set(kind, {
              count: known.count + 1,
              plain: known.plain + body.length,
              zipped: known.zipped + zipped,
            });
          })
          .catch(() => undefined),
      );
    });
    await page.goto(`http://127.0.0.1:${server.port}/`);
    await page.getByRole("application", { name: "Drawing" }).waitFor();
    await page.waitForTimeout(1500);
    await Promise.all(bodies);
  } finally {
    await browser.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
  const kilo = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
  return [
    ...[...sizes].map(
      ([kind, size]) =>
        `${kind.padEnd(10)} ${size.count} files, ${kilo(size.plain)}, ${kilo(size.zipped)} gzipped`,
    ),
    `JavaScript before first interaction: ${kilo(script)} gzipped, target ${kilo(TARGET_BYTES)} or less`,
  ];
}
