import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, chromium, type Page } from "@playwright/test";
import { build } from "vite";
import { chromiumFlags, needChromium } from "../../src/tasks/chromium.mjs";
import { serve } from "../../src/tasks/serve.mjs";

/** `WIRES=500 npm run bench -- frames` measures one size only. */
const COUNTS = (process.env.WIRES ?? "100,500,1000").split(",").map(Number);
const STEPS = 90;
/** Each figure is the median of so many runs: the machine does other things as well. */
const RUNS = Number(process.env.RUNS ?? 3);

/** Run in the page as they stand: a function would bring the compiler's helpers along, which the page lacks. */
const RECORD = `window.times = []; window.recording = true;
  requestAnimationFrame(function tick(now) { times.push(now); if (recording) requestAnimationFrame(tick); });`;
const STOP = "window.recording = false; times.slice(1).map((time, index) => time - times[index])";

type Frames = {
  readonly p50: number;
  readonly p95: number;
  /** Work of the page's main thread for each step of the pointer: it says the same on a busy machine. */
  readonly work_ms: number;
};

/**
 * Time between frames, milliseconds, while the drawing is panned and while one connector is dragged, beside a bare
 * React Flow page with as many nodes and edges: with everything in view, and at life size.
 */
export async function bench(): Promise<string[]> {
  const folder = mkdtempSync(join(tmpdir(), "pigtail-frames-"));
  const configFile = fileURLToPath(new URL("./frames/vite.config.ts", import.meta.url));
  await build({ configFile, logLevel: "error", build: { outDir: folder } });
  const server = await serve(folder, 0);
  const browser = await chromium.launch({ executablePath: await needChromium(), args: [...chromiumFlags] });
  const lines = ["wires  view   what   ours p50/p95 (work) ms      bare p50/p95 (work) ms"];
  try {
    for (const wires of COUNTS) {
      for (const near of [false, true]) {
        for (const what of ["pan", "drag"] as const) {
          const measure = (page: string) =>
            middle(browser, `http://127.0.0.1:${server.port}/${page}`, { wires, near, what });
          const ours = await measure("own.html");
          const bare = await measure("bare.html");
          lines.push(
            `${String(wires).padStart(5)}  ${near ? "near " : "whole"}  ${what.padEnd(4)}   ${show(ours)}   ${show(bare)}`,
          );
        }
      }
    }
  } finally {
    await browser.close();
    server.close();
    rmSync(folder, { recursive: true, force: true });
  }
  return lines;
}

const show = ({ p50, p95, work_ms }: Frames): string =>
  `${p50.toFixed(1).padStart(7)}/${p95.toFixed(1).padEnd(7)} (${work_ms.toFixed(1).padStart(5)})`;

type Ask = { readonly wires: number; readonly near: boolean; readonly what: "pan" | "drag" };

async function middle(browser: Browser, address: string, ask: Ask): Promise<Frames> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  const runs: Frames[] = [];
  try {
    await page.goto(`${address}?wires=${ask.wires}${ask.near ? "&near" : ""}`);
    await page.locator(".react-flow__node").first().waitFor({ state: "attached" });
    await page.waitForTimeout(2500);
    for (let run = 0; run < RUNS; run++) runs.push(await framesWhile(page, ask.what));
  } finally {
    await page.close();
  }
  const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
  return {
    p50: median(runs.map((run) => run.p50)),
    p95: median(runs.map((run) => run.p95)),
    work_ms: median(runs.map((run) => run.work_ms)),
  };
}

async function framesWhile(page: Page, what: Ask["what"]): Promise<Frames> {
  const start = what === "pan" ? { x: 640, y: 30 } : await firstPart(page);
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable", { timeDomain: "threadTicks" });
  const worked_s = async (): Promise<number> => {
    const { metrics } = await session.send("Performance.getMetrics");
    return metrics.find((metric) => metric.name === "TaskDuration")?.value ?? 0;
  };
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.mouse.move(start.x + 6, start.y + 3);
  await page.evaluate(RECORD);
  const before_s = await worked_s();
  for (let step = 0; step < STEPS; step++) {
    // Out and back, so that every run sees the same of the drawing.
    const away = (step < STEPS / 2 ? step : STEPS - step) * 9;
    await page.mouse.move(start.x + 6 + away, start.y + 3 + away / 3);
  }
  const work_ms = ((await worked_s()) - before_s) * (1000 / STEPS);
  await page.mouse.up();
  await session.detach();
  const deltas = await page.evaluate<number[]>(STOP);
  deltas.sort((a, b) => a - b);
  const at = (share: number): number =>
    deltas[Math.min(deltas.length - 1, Math.floor(deltas.length * share))]!;
  return { p50: at(0.5), p95: at(0.95), work_ms };
}

/** A spot in the head of the first part that is in view. */
async function firstPart(page: Page): Promise<{ x: number; y: number }> {
  const spot = await page.evaluate(() => {
    for (const node of document.querySelectorAll(".react-flow__node")) {
      const box = node.getBoundingClientRect();
      if (box.height < box.width || box.left < 0 || box.top < 0 || box.right > 900) continue;
      return { x: box.left + box.width / 2, y: box.top + box.height * 0.05 + 1 };
    }
    return null;
  });
  if (!spot) throw new Error("no part is in view");
  return spot;
}
