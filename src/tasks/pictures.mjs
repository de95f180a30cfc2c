import { mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "@playwright/test";
import { build } from "./build.mjs";
import { chromiumFlags, needChromium } from "./chromium.mjs";
import { isMain, root } from "./process.mjs";
import { serve } from "./serve.mjs";

/** Where README looks for its pictures. */
const FOLDER = join(root, "samples", "pictures");
const MOST_BYTES = 300_000;
const CLEAN = "wren-receiver-adapter";
const FAULTY = "wren-receiver-adapter-faults";
const DESK = { width: 1280, height: 800 };
const PHONE = { width: 390, height: 844 };

/**
 * Opens a sample in a window of its own and waits until it is drawn.
 * @param {import("@playwright/test").Browser} browser
 * @param {string} address the editor's
 * @param {string} sample
 * @param {import("@playwright/test").BrowserContextOptions} options
 */
async function openSample(browser, address, sample, options) {
  const context = await browser.newContext({ reducedMotion: "reduce", serviceWorkers: "block", ...options });
  const page = await context.newPage();
  // With the browser's own file picker nobody would be there to answer it.
  await page.addInitScript(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
  await page.goto(`${address}?sample=${sample}`);
  await page.getByRole("main").getByRole("group").first().waitFor();
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(500);
  return page;
}

/**
 * The first page of the papers, as they are printed.
 * @param {import("@playwright/test").Page} page
 * @returns {Promise<Buffer>} a PNG
 */
async function firstSheet(page) {
  await page.getByRole("button", { name: "Print or save the diagram" }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save PDF" }).click();
  const data = new Uint8Array(readFileSync(await (await download).path()));
  const { getDocument } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  const { createCanvas } = await import("@napi-rs/canvas");
  const sheet = await (await getDocument({ data, verbosity: 0 }).promise).getPage(1);
  const viewport = sheet.getViewport({ scale: 1280 / sheet.getViewport({ scale: 1 }).width });
  const canvas = createCanvas(Math.round(viewport.width), Math.round(viewport.height));
  await sheet.render({
    canvas: /** @type {HTMLCanvasElement} */ (/** @type {unknown} */ (canvas)),
    viewport,
  }).promise;
  return canvas.toBuffer("image/png");
}

/**
 * @param {string} name
 * @param {Buffer} picture a PNG
 * @throws Error if it is too large for a page that people load
 */
function put(name, picture) {
  const file = join(FOLDER, `${name}.png`);
  writeFileSync(file, picture);
  const { size } = statSync(file);
  console.log(`samples/pictures/${name}.png  ${Math.round(size / 1000)} kB`);
  if (size > MOST_BYTES) throw new Error(`${name}.png is larger than ${MOST_BYTES / 1000} kB.`);
}

/** Makes README's pictures from the editor as it is. */
async function makePictures() {
  const executablePath = await needChromium();
  await build();
  mkdirSync(FOLDER, { recursive: true });
  const server = await serve(join(root, "dist"), 0);
  const address = `http://127.0.0.1:${server.port}/`;
  const browser = await chromium.launch({ executablePath, args: [...chromiumFlags] });
  try {
    const light = await openSample(browser, address, CLEAN, { viewport: DESK, colorScheme: "light" });
    put("light", await light.screenshot());
    put("sheet", await firstSheet(light));
    const dark = await openSample(browser, address, CLEAN, { viewport: DESK, colorScheme: "dark" });
    put("dark", await dark.screenshot());
    const findings = await openSample(browser, address, FAULTY, { viewport: DESK, colorScheme: "light" });
    put("findings", await findings.screenshot());
    const phone = await openSample(browser, address, FAULTY, {
      viewport: PHONE,
      deviceScaleFactor: 2,
      hasTouch: true,
      isMobile: true,
      colorScheme: "light",
    });
    put("phone", await phone.screenshot());
  } finally {
    await browser.close();
    server.close();
  }
}

if (isMain(import.meta.url)) await makePictures();
