import { joinedPlugs, twoPlugs } from "./harnesses.ts";
import { boxOf, expect, middleOf, test } from "./page.ts";

test("dragging from contact to contact joins them by a splice, and undo takes it back", async ({
  editor,
}) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  await editor.drag(editor.contact("X1.3"), editor.contact("X2.3"));
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/joined by W\d+ to XJ1/);
  await expect(editor.part("XJ1")).toBeVisible();
  await expect(editor.undo("join X1.3 to X2.3")).toBeVisible();
  await editor.page.keyboard.press("Control+z");
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/no wire/);
  await expect(editor.part("XJ1")).toHaveCount(0);
});

test("Escape gives up a lead in the middle of a drag", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  const { mouse, keyboard } = editor.page;
  const [start, end] = [await middleOf(editor.contact("X1.3")), await middleOf(editor.contact("X2.3"))];
  await mouse.move(start.x, start.y);
  await mouse.down();
  await mouse.move(end.x, end.y, { steps: 5 });
  await expect(editor.status).toContainText("Let go to join X1.3 to X2.3 by a splice");
  await keyboard.press("Escape");
  await mouse.up();
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/no wire/);
});

test("a lead let go on empty ground asks what it ends in", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  const start = await middleOf(editor.contact("X1.3"));
  await editor.dragTo(editor.contact("X1.3"), { x: start.x + 230, y: start.y });
  await editor.page.getByRole("menuitem", { name: "Ground" }).click();
  await expect(editor.part("XE1")).toBeVisible();
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/joined by W1 to XE1/);
});

test("the next row's lead is let go under a fuse, and gets a fuse of its own beside it", async ({
  editor,
}) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  for (const [row, fuse] of [
    ["X1.1", "F1"],
    ["X1.2", "F2"],
  ] as const) {
    const { x, y } = await middleOf(editor.contact(row));
    await editor.dragTo(editor.contact(row), { x: x + 130, y });
    await editor.page.getByRole("menuitem", { name: "Fuse", exact: true }).click();
    await expect(editor.part(fuse)).toBeVisible();
    await editor.page.keyboard.press("Escape");
  }
});

test("a lead let go on a wire is spliced into it", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await editor.run("Add a fuse");
  await expect(editor.part("F1")).toBeVisible();
  const [a, b] = [await middleOf(editor.contact("X1.2")), await middleOf(editor.contact("XJ2.1"))];
  await editor.dragTo(editor.contact("F1.1"), { x: (a.x + b.x) / 2, y: a.y });
  await expect(editor.contact("F1.1")).toHaveAccessibleName(/joined by W\d+ to XJ5/);
});

test("dragging a part is one step", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  const before = await middleOf(editor.part("X2"));
  const box = await boxOf(editor.part("X2"));
  const { mouse } = editor.page;
  await mouse.move(box.x + 90, box.y + 30);
  await mouse.down();
  for (let step = 1; step <= 8; step++) await mouse.move(box.x + 90 + step * 4, box.y + 30 + step * 8);
  await mouse.up();
  await expect.poll(async () => (await middleOf(editor.part("X2"))).y - before.y).toBeGreaterThan(50);
  await expect(editor.undo("move X2")).toBeVisible();
  await editor.page.keyboard.press("Control+z");
  await expect.poll(() => middleOf(editor.part("X2"))).toEqual(before);
  await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true");
});

test("pointing at a contact says what its circuit joins, and the rest steps back", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  const spot = await middleOf(editor.contact("X1.1"));
  await editor.page.mouse.move(spot.x, spot.y);
  await expect(editor.status).toContainText(/X1\.1.*X2\.2/);
  await expect(editor.page.locator(".canvas-flow")).toHaveClass(/tracing/);
  await expect(editor.page.locator(".lifted")).toHaveCount(3);
});

test("a text is edited where it stands; Escape restores it, Tab goes on to the next", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  const box = await boxOf(editor.part("X1"));
  const row = await middleOf(editor.contact("X1.4"));
  await editor.page.mouse.dblclick(box.x + 20, row.y);
  const field = editor.page.getByRole("combobox", { name: "Function of X1.4" });
  await field.fill("reverse");
  await field.press("Escape");
  await expect(editor.contact("X1.4")).toHaveAccessibleName(/illumination/);
  await editor.page.mouse.dblclick(box.x + 20, row.y);
  await field.fill("reverse");
  await field.press("Shift+Tab");
  await expect(editor.page.getByRole("combobox", { name: "Lead colour of X1.4" })).toBeFocused();
  await expect(editor.contact("X1.4")).toHaveAccessibleName(/X1\.4, reverse/);
});

test("duplicating makes a second one under a new name, selected, so that Delete takes it away again", async ({
  editor,
}) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await editor.part("X1").click({ position: { x: 60, y: 16 } });
  await editor.page.keyboard.press("Control+d");
  await expect(editor.part("X3")).toBeVisible();
  await editor.page.keyboard.press("Delete");
  await expect(editor.part("X3")).toHaveCount(0);
  await expect(editor.part("X1")).toBeVisible();
});

test("a drawing that is in sight as a whole stays so when the wire table opens and when a copy is added", async ({
  editor,
}) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  const drawing = editor.page.getByLabel("Drawing", { exact: true });
  const within = async (name: string) => {
    const [sheet, part] = [await drawing.boundingBox(), await editor.part(name).boundingBox()];
    if (!sheet || !part) return false;
    return (
      part.x >= sheet.x &&
      part.y >= sheet.y &&
      part.x + part.width <= sheet.x + sheet.width &&
      part.y + part.height <= sheet.y + sheet.height
    );
  };
  await drawing.focus();
  await editor.page.keyboard.press("0");
  await expect.poll(() => within("X1")).toBe(true);
  for (let copy = 3; copy <= 5; copy++) {
    await editor.part("X1").click({ position: { x: 20, y: 12 } });
    await editor.page.keyboard.press("Control+d");
    await expect.poll(() => within(`X${copy}`)).toBe(true);
  }
  await editor.page.keyboard.press("Alt+w");
  await expect(editor.wires).toBeVisible();
  for (const name of ["X1", "X2", "X5"]) await expect.poll(() => within(name)).toBe(true);
});

test("what is typed while a dialog is still being fetched does nothing to the drawing", async ({
  editor,
}) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  await editor.part("X1").click({ position: { x: 20, y: 12 } });
  await editor.page.evaluate(() => {
    const press = (key: string, ctrlKey = false) =>
      document.activeElement?.dispatchEvent(
        new KeyboardEvent("keydown", { key, ctrlKey, bubbles: true, cancelable: true }),
      );
    press("f", true);
    for (const letter of "tpi") press(letter);
    press("Delete");
    press("Backspace");
  });
  await expect(editor.page.getByRole("dialog").getByRole("combobox")).toHaveValue("tp");
  await expect(editor.part("X1")).toBeVisible();
  await expect(editor.header.getByRole("button", { name: /^Undo/ })).toBeDisabled();
});

test("the menu of a part opens by mouse and by key, and closes with Escape", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  await editor.part("X1").click({ button: "right", position: { x: 60, y: 16 } });
  const menu = editor.page.getByRole("menu", { name: "What can be done here" });
  await expect(menu.getByRole("menuitem", { name: /Delete/ })).toBeVisible();
  await editor.page.keyboard.press("Escape");
  await expect(menu).toHaveCount(0);
  await editor.page.keyboard.press("Shift+F10");
  await menu.getByRole("menuitem", { name: /Turn left for right/ }).click();
  await expect(editor.undo("turn left for right")).toBeVisible();
});

test.describe("by touch", () => {
  test.use({ hasTouch: true, viewport: { width: 820, height: 900 } });

  test("tapping two contacts joins them; a long press opens the menu", async ({ editor }) => {
    await editor.open();
    await editor.openHarness(twoPlugs());
    await editor.contact("X1.3").tap();
    await editor.contact("X2.3").tap();
    await expect(editor.contact("X1.3")).toHaveAccessibleName(/joined by W\d+ to XJ1/);
    const at = await middleOf(editor.part("X2"));
    const session = await editor.page.context().newCDPSession(editor.page);
    const points = [{ x: at.x, y: at.y }];
    await session.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: points });
    await expect(editor.page.getByRole("menu", { name: "What can be done here" })).toBeVisible();
    await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  });

  test("one finger pans the drawing", async ({ editor }) => {
    await editor.open();
    await editor.openHarness(twoPlugs());
    const before = await middleOf(editor.part("X1"));
    const session = await editor.page.context().newCDPSession(editor.page);
    const finger = (x: number, y: number) => [{ x, y }];
    await session.send("Input.dispatchTouchEvent", {
      type: "touchStart",
      touchPoints: finger(before.x, before.y),
    });
    for (let step = 1; step <= 6; step++) {
      const touchPoints = finger(before.x + step * 12, before.y + step * 5);
      await session.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints });
    }
    await session.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
    await expect.poll(async () => (await middleOf(editor.part("X1"))).x - before.x).toBeGreaterThan(40);
    await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute(
      "aria-disabled",
      "true",
    );
  });
});
