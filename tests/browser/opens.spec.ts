import { fileURLToPath } from "node:url";
import { expect, type Page, test } from "@playwright/test";
import { serve } from "../../src/tasks/serve.mjs";

/** Collects what a person would not see: script errors, and requests that fail or leave the machine. */
function watch(page: Page, own: string): string[] {
  const troubles: string[] = [];
  page.on("pageerror", (error) => troubles.push(error.message));
  page.on("console", (message) => {
    if (message.type() === "error") troubles.push(message.text());
  });
  page.on("requestfailed", (request) => troubles.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    if (!request.url().startsWith(own) && !/^(blob|data):/.test(request.url())) troubles.push(request.url());
  });
  return troubles;
}

test("the page opens with no error and asks nothing of any other host", async ({ page, baseURL }) => {
  const troubles = watch(page, baseURL ?? "");
  await page.goto("./");
  await expect(page).toHaveTitle(/Pigtail/);
  await expect(page.getByRole("main")).toBeVisible();
  expect(troubles).toEqual([]);
});

test("the built folder works from a sub-path of any host", async ({ page }) => {
  const server = await serve(fileURLToPath(new URL("../..", import.meta.url)), 0);
  try {
    const address = `http://127.0.0.1:${server.port}/dist/`;
    const troubles = watch(page, address);
    await page.goto(address);
    await expect(page.getByRole("main")).toBeVisible();
    expect(troubles).toEqual([]);
  } finally {
    server.close();
  }
});
