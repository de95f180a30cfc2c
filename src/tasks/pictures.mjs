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

/** Two charts of the mobile library: the van's radio plug, and the leads that came with the receiver. */
const CHARTS = [
  `Step van Wren, radio plug, seen from the wire side
A4: +12 V constant (red, fuse 15 A)
A7: ignition (yellow)
A8: ground (brown)
A5: aerial motor (green)
A6: remote (violet)
B3: front right + (grey)
B4: front right - (grey/black)
B5: front left + (white)
B6: front left - (white/black)
A2: mute (orange)`,
  `colour;use
yellow;battery, memory
red;accessory
black;earth
white;FL spk +
white/black;FL spk -
gray;FR spk +
gray/black;FR spk -
blue;power antenna
blue/white;amp turn-on`,
];

/**
 * The review of two pasted charts.
 * @param {import("@playwright/test").Browser} browser
 * @param {string} address the editor's
 */
async function reviewOfCharts(browser, address) {
  const context = await browser.newContext({
    reducedMotion: "reduce",
    serviceWorkers: "block",
    viewport: DESK,
    colorScheme: "light",
    permissions: ["clipboard-read", "clipboard-write"],
  });
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole("button", { name: "Join two charts" }).click();
  const dialog = page.getByRole("dialog", { name: "Join two charts" });
  await dialog.getByRole("textbox").first().waitFor();
  await page.waitForTimeout(500);
  for (const [index, text] of CHARTS.entries()) {
    await page.evaluate((words) => navigator.clipboard.writeText(words), text);
    await page.keyboard.press("Control+v");
    await dialog
      .getByText(/rows read/)
      .nth(index)
      .waitFor();
    await page.waitForTimeout(500);
  }
  await page.keyboard.press("Control+Enter");
  await dialog.getByRole("button", { name: /^Accept/ }).waitFor();
  await page.waitForTimeout(500);
  return page.screenshot();
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
    put("charts", await reviewOfCharts(browser, address));
    const readings = await openSample(browser, address, CLEAN, { viewport: DESK, colorScheme: "light" });
    await readings.keyboard.press("v");
    await readings.getByRole("radio", { name: "Run" }).check({ force: true });
    await readings.keyboard.press("Alt+v");
    await readings.getByText("In this state").waitFor();
    await readings.waitForTimeout(800);
    put("readings", await readings.screenshot());
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
