import { type EditorPage, expect, expectAccessible, test } from "./page.ts";

const bar = (editor: EditorPage) => editor.page.getByRole("region", { name: "Readings" });
const words = (editor: EditorPage) => bar(editor).getByRole("status");

/** Opens a sample, its readings on and worked out, near enough for contacts to have names. */
async function read(editor: EditorPage, sample: string): Promise<void> {
  await editor.open(`./?sample=${sample}`);
  await expect(editor.drawing.getByRole("group").first()).toBeVisible();
  await editor.page.getByRole("button", { name: "Readings", exact: true }).click();
  await expect(words(editor)).toContainText("drawn");
}

/** Shows a part so near that its contacts can be read, and selects it. */
async function goTo(editor: EditorPage, part: string): Promise<void> {
  await editor.find(part);
  await expect(editor.part(part)).toBeVisible();
  await editor.page.getByLabel("Drawing", { exact: true }).focus();
}

test("volts at a contact follow the key, reverse and what is undone", async ({ editor }) => {
  const { page } = editor;
  await read(editor, "reversing-camera");
  await goTo(editor, "E1");
  const lamp = editor.contact("E1.+");
  await expect(lamp).toHaveAccessibleName(/E1\.\+, 0(\.0\d)? V, does not work/);
  const reverse = bar(editor).getByRole("checkbox", { name: "reverse" });
  await reverse.check();
  await expect(lamp).toHaveAccessibleName(/E1\.\+, 12\.\d\d V, draws 1\.\d A, works/);
  await expect(words(editor)).toContainText("Key at run, reverse.");

  await bar(editor).getByRole("radio", { name: "Run" }).focus();
  await page.keyboard.press("ArrowRight");
  await expect(bar(editor).getByRole("radio", { name: "Crank" })).toBeChecked();
  await expect(words(editor)).toContainText("Key at crank, reverse. 9.60 V");
  await expect(lamp).toHaveAccessibleName(/E1\.\+, 9\.\d\d V/);
  await page.keyboard.press("ArrowLeft");
  await expect(lamp).toHaveAccessibleName(/E1\.\+, 12\.\d\d V/);

  // An edit is followed, and so is its undo.
  await editor.part("F1").click({ position: { x: 20, y: 20 } });
  await page.keyboard.press("Delete");
  await expect(editor.part("F1")).toHaveCount(0);
  const drawn = /\d A drawn/;
  await expect(words(editor)).toContainText(drawn);
  const cut = await words(editor).textContent();
  await page.keyboard.press("Control+z");
  await expect(editor.part("F1")).toBeVisible();
  await expect(words(editor)).not.toHaveText(cut ?? "");
});

test("a wire says what it carries to whoever walks the drawing by keyboard", async ({ editor }) => {
  const { page } = editor;
  await read(editor, "work-lamp-relay");
  await bar(editor).getByRole("checkbox", { name: "S1 closed" }).check();
  await expect(words(editor)).toContainText("8.1 A drawn");
  await goTo(editor, "K1");
  await page.keyboard.press("Enter");
  await page.keyboard.press("End");
  await expect(editor.drawing.getByText(/^K1\.87, 12\.\d\d V/)).toBeAttached();
  await page.keyboard.press("w");
  await expect(
    editor.drawing.getByText(/^W8, .*, carries 8 A from K1\.87 to XJ2\.\d, \d+ % of what it may/),
  ).toBeAttached();
});

test("turned on and off by a key and by name; off, contacts say no volts", async ({ editor }) => {
  const { page } = editor;
  await read(editor, "work-lamp-relay");
  await goTo(editor, "G1");
  await expect(editor.contact("G1.+")).toHaveAccessibleName(/12\.60 V/);
  await page.keyboard.press("v");
  await expect(bar(editor)).toHaveCount(0);
  await expect(editor.contact("G1.+")).not.toHaveAccessibleName(/12\.60 V/);
  await editor.run("Show readings");
  await expect(words(editor)).toContainText("drawn");
  await editor.run("Readings: key at off");
  await expect(bar(editor).getByRole("radio", { name: "Off" })).toBeChecked();
});

test("a fuse at its rating carries a shape and a word, and leads to the fuse", async ({ editor }) => {
  await read(editor, "amplified-sound");
  await bar(editor).getByRole("checkbox", { name: "unit on" }).check();
  const tag = editor.drawing.getByRole("button", { name: /^Reading, full: F1 carries 100 % of its rating/ });
  await tag.click();
  await expect(editor.status).toContainText("F1");
});

test("nothing of the readings is out of reach", async ({ editor }) => {
  await read(editor, "amplified-sound");
  await bar(editor).getByRole("checkbox", { name: "unit on" }).check();
  for (const overlay of ["Amperes", "Load", "Drop"]) {
    await bar(editor).getByRole("radio", { name: overlay }).check();
    await expectAccessible(editor.page, overlay);
  }
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("the bar is one line until it is opened, and nothing sticks out", async ({ editor }) => {
    const { page } = editor;
    await read(editor, "work-lamp-relay");
    await expect(bar(editor).getByRole("radio")).toHaveCount(0);
    await bar(editor).getByRole("button", { name: "Change" }).tap();
    await bar(editor).getByRole("radio", { name: "Amperes" }).check();
    await bar(editor).getByRole("checkbox", { name: "S1 closed" }).check();
    await expect(words(editor)).toContainText("8.1 A drawn");
    await expectAccessible(page, "readings on a phone");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
    await bar(editor).getByRole("button", { name: "Less" }).tap();
    await expect(bar(editor).getByRole("radio")).toHaveCount(0);
    await expect(words(editor)).toContainText("S1 closed");
  });
});
