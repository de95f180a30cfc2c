import { joinedPlugs, twoPlugs } from "./harnesses.ts";
import { type EditorPage, expect, test } from "./page.ts";

/** Goes to the drawing the way somebody without a mouse does. */
async function tabToDrawing(editor: EditorPage): Promise<void> {
  for (let presses = 0; presses < 25; presses++) {
    await editor.page.keyboard.press("Tab");
    const name = await editor.page.evaluate(() => document.activeElement?.getAttribute("aria-label"));
    if (name === "Drawing") return;
  }
  throw new Error("25 presses of Tab did not reach the drawing");
}

test("two contacts are joined without a mouse, every step is said, and undone", async ({ editor }) => {
  const { keyboard } = editor.page;
  await editor.open();
  await editor.openHarness(twoPlugs());
  await expect(editor.part("X1")).toBeVisible();
  await tabToDrawing(editor);
  const said = editor.drawing.locator("[aria-live=polite]");
  await keyboard.press("ArrowRight");
  await expect(said).toContainText("X1, connector, van, 4 contacts");
  await keyboard.press("Enter");
  await expect(said).toContainText("X1.1, constant feed");
  await keyboard.press("ArrowDown");
  await keyboard.press("ArrowDown");
  await expect(said).toContainText("X1.3");
  await keyboard.press("j");
  await expect(said).toContainText("Lead from X1.3");
  await keyboard.press("ArrowRight");
  await keyboard.press("Home");
  await keyboard.press("ArrowDown");
  await keyboard.press("ArrowDown");
  await expect(said).toContainText("X2.3");
  await keyboard.press("Enter");
  await expect(said).toContainText("Joined. X2.3");
  await expect(editor.status).toContainText(/X2\.3 ground.* X1\.3 ground.* XJ1/);
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/joined by W\d+ to XJ1/);

  await keyboard.press("Control+z");
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/no wire/);
  await keyboard.press("Control+Shift+Z");
  await expect(editor.contact("X1.3")).toHaveAccessibleName(/joined by/);
});

test("a lead begun by key is given up with Escape and nothing is drawn", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(twoPlugs());
  await expect(editor.part("X1")).toBeVisible();
  await tabToDrawing(editor);
  for (const key of ["ArrowRight", "Enter", "j", "ArrowRight", "Escape"])
    await editor.page.keyboard.press(key);
  await expect(editor.status).toContainText("No lead was drawn");
  await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true");
});

test("from a contact its wire leads on to the other end", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(editor.part("X1")).toBeVisible();
  await tabToDrawing(editor);
  const said = editor.drawing.locator("[aria-live=polite]");
  for (const key of ["ArrowRight", "Enter", "ArrowRight"]) await editor.page.keyboard.press(key);
  await expect(said).toContainText("W1, red, from X1.1 to XJ1");
  await editor.page.keyboard.press("ArrowRight");
  await expect(said).toContainText("XJ1");
  await expect(editor.status).toContainText(/X1\.1 constant feed.* X2\.2 constant feed/);
});

test("a text is edited where it stands: F2, type, Tab to the next, Enter", async ({ editor }) => {
  const { page } = editor;
  await editor.open();
  await editor.openHarness(twoPlugs());
  await expect(editor.part("X1")).toBeVisible();
  await tabToDrawing(editor);
  for (const key of ["ArrowRight", "F2"]) await page.keyboard.press(key);
  await expect(page.getByRole("textbox", { name: "Designation of X1" })).toBeFocused();
  await page.keyboard.type("X7");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("textbox", { name: "Name of X7" })).toBeFocused();
  await page.keyboard.type("van, behind the dash");
  await page.keyboard.press("Enter");
  await expect(editor.part("X7")).toHaveAccessibleName(/van, behind the dash/);
  await expect(page.getByLabel("Drawing", { exact: true })).toBeFocused();
});

test("everything that can be done is in one list, with its key, and runs from there", async ({ editor }) => {
  const { page } = editor;
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await page.keyboard.press("/");
  const list = page.getByRole("listbox", { name: "What to do" });
  await expect(list.getByRole("option", { name: /^Save\s*Ctrl\+S/ })).toBeVisible();
  for (const name of ["Arrange the drawing", "Print or save the diagram", "Find a part or a wire", "Fuse"]) {
    await expect(list.getByRole("option").filter({ hasText: name }).first()).toBeAttached();
  }
  await page.keyboard.type("wire table");
  await expect(list.getByRole("option").first()).toContainText("wire table", { ignoreCase: true });
  await page.keyboard.press("Enter");
  await expect(editor.wires).toBeVisible();
  await editor.press("Control+k");
  await expect(page.getByRole("combobox", { name: "What to do" })).toBeFocused();
  await page.keyboard.type("no such thing as this");
  await expect(page.getByText("Nothing here is called that")).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(list).toBeHidden();
});

test("find goes to a contact by its function, its colour or a wire by its number", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await editor.find("illumination", "X1.4");
  await expect(editor.status).toContainText(/X1\.4 illumination.* X2\.4 illumination/);
  await editor.find("W3");
  await expect(editor.status).toContainText("W3, yellow");
  await editor.find("orange/white", "X2.4");
  await expect(editor.status).toContainText("X2.4");
});

test("the menu of what can be done opens and works by key", async ({ editor }) => {
  const { page } = editor;
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(editor.part("X1")).toBeVisible();
  await tabToDrawing(editor);
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("Shift+F10");
  const menu = page.getByRole("menu", { name: "What can be done here" });
  await expect(menu.getByRole("menuitem").first()).toBeFocused();
  await page.keyboard.press("d");
  await page.keyboard.press("Escape");
  await expect(menu).toBeHidden();
  await page.keyboard.press("Delete");
  await expect(editor.part("X1")).toHaveCount(0);
  await expect(editor.undo("")).toBeVisible();
});
