import type { Locator } from "@playwright/test";
import { stackedPlugs } from "./harnesses.ts";
import { boxOf, type EditorPage, expect, middleOf, test } from "./page.ts";

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 });

async function tap(editor: EditorPage, thing: Locator): Promise<void> {
  const { x, y } = await middleOf(thing);
  await editor.page.touchscreen.tap(x, y);
}

const view = (editor: EditorPage, name: string) =>
  editor.page.getByRole("navigation", { name: "What is shown" }).getByRole("button", { name });

async function show(editor: EditorPage, name: string): Promise<void> {
  await view(editor, name).tap();
  await expect(view(editor, name)).toHaveAttribute("aria-current", "page");
}

async function openOnPhone(editor: EditorPage): Promise<void> {
  await editor.open();
  await editor.openHarness(stackedPlugs());
  await expect(editor.part("X1")).toBeVisible();
}

test("one thing at a time: drawing, findings, wires, details", async ({ editor }) => {
  const { page } = editor;
  await openOnPhone(editor);
  await view(editor, "Findings").tap();
  const found = page.getByRole("listitem").filter({ hasText: "reaches no ground" });
  await expect(found).toBeVisible();
  await found.getByRole("button", { name: /^Show on the drawing/ }).tap();
  await expect(editor.status).toContainText("X2.3 ground");
  await expect(editor.contact("X2.3")).toBeVisible();
  await view(editor, "Wires").tap();
  await expect(editor.wires).toBeVisible();
  await view(editor, "Details").tap();
  await expect(
    page.getByRole("heading", { name: "The harness" }).or(page.getByRole("heading", { name: /^X2/ })),
  ).toBeVisible();
  await view(editor, "Drawing").tap();
  await expect(editor.part("X1")).toBeVisible();
});

test("two contacts are joined by two taps, and parted by a third", async ({ editor }) => {
  await openOnPhone(editor);
  await tap(editor, editor.contact("X1.3"));
  await expect(editor.status).toContainText("Lead from X1.3");
  await tap(editor, editor.contact("X2.3"));
  await expect(editor.contact("X2.3")).toHaveAccessibleName(/joined by W\d+/);
  await expect(editor.status).toContainText("Done: join X1.3 to X2.3");
  await editor.header.getByRole("button", { name: /^Undo: join/ }).tap();
  await expect(editor.contact("X2.3")).toHaveAccessibleName(/no wire/);
});

test("two fingers zoom, one finger moves the paper", async ({ editor }) => {
  const { page } = editor;
  await openOnPhone(editor);
  const client = await page.context().newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", ...points: (readonly [number, number])[]) =>
    client.send("Input.dispatchTouchEvent", {
      type,
      touchPoints: points.map(([x, y], id) => ({ x, y, id })),
    });
  const width = async () => (await editor.part("X1").boundingBox())?.width ?? 0;
  const before = await width();
  const { x, y } = await middleOf(editor.part("X1"));
  await touch("touchStart", [x - 30, y], [x + 30, y]);
  for (let step = 1; step <= 8; step++)
    await touch("touchMove", [x - 30 - 4 * step, y], [x + 30 + 4 * step, y]);
  await touch("touchEnd");
  await expect.poll(width).toBeGreaterThan(1.3 * before);
  const zoomed = await boxOf(editor.part("X1"));
  await touch("touchStart", [x, y + 300]);
  for (let step = 1; step <= 8; step++) await touch("touchMove", [x, y + 300 - 10 * step]);
  await touch("touchEnd");
  await expect.poll(async () => (await editor.part("X1").boundingBox())?.y ?? 0).toBeLessThan(zoomed.y - 50);
  await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true");
});

test("nothing is cut off at the side, and what a finger presses is 44 pixels", async ({ editor }) => {
  const { page } = editor;
  await openOnPhone(editor);
  for (const name of ["Drawing", "Findings", "Wires", "Details"]) {
    await show(editor, name);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide, name).toBeLessThanOrEqual(0);
    const small = await page
      .locator("header button:visible, nav button:visible, .finding-buttons button:visible")
      .evaluateAll((buttons) =>
        buttons
          .map((button) => ({ name: button.textContent, box: button.getBoundingClientRect() }))
          .filter(({ box }) => box.width < 44 || box.height < 44)
          .map(({ name, box }) => `${name}: ${box.width} × ${box.height}`),
      );
    expect(small, name).toEqual([]);
  }
});

test("from afar a finding is marked where it is", async ({ editor }) => {
  await editor.open("./?sample=wren-receiver-adapter-faults");
  const { x: left, y: top } = await boxOf(editor.drawing);
  const marks = editor.drawing.getByRole("button", { name: / at [XW]/ });
  await expect(marks.first()).toBeVisible();
  const plugs = await Promise.all(["X1", "X2", "X3"].map((name) => boxOf(editor.part(name))));
  const lowest = Math.max(...plugs.map((box) => box.y + box.height));
  const highest = Math.min(...plugs.map((box) => box.y));
  for (const mark of await marks.all()) {
    const { x, y } = await middleOf(mark);
    expect(x).toBeGreaterThan(left);
    expect(y).toBeGreaterThan(Math.max(top, highest - 30));
    expect(y).toBeLessThan(lowest + 60);
  }
});
