import { joinedPlugs } from "./harnesses.ts";
import { type EditorPage, expect, test } from "./page.ts";

test.use({ permissions: ["clipboard-read", "clipboard-write"], viewport: { width: 1600, height: 900 } });

async function openTable(editor: EditorPage): Promise<void> {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await editor.press("Alt+w");
  await expect(editor.wires).toHaveAttribute("aria-rowcount", "9");
}

const cell = (editor: EditorPage, wire: string, column: string) =>
  editor.row(wire).locator(`[data-column=${column}]`);

async function pasteText(editor: EditorPage, text: string): Promise<void> {
  await editor.page.evaluate((content) => navigator.clipboard.writeText(content), text);
  await editor.page.keyboard.press("Control+v");
}

const column = (editor: EditorPage, name: string) =>
  editor.wires.locator(`[role=gridcell][data-column=${name}]`).allTextContents();
/** The same once it has become so; the first rows alone. */
const expectColumn = (editor: EditorPage, name: string, texts: readonly string[]) =>
  expect.poll(async () => (await column(editor, name)).slice(0, texts.length)).toEqual(texts);

test("a cell is edited like a spreadsheet's, and the drawing follows", async ({ editor }) => {
  const { keyboard } = editor.page;
  await openTable(editor);
  await cell(editor, "W1", "base").click();
  await keyboard.type("gn");
  await keyboard.press("Enter");
  await expect(cell(editor, "W1", "base")).toHaveText("GN");
  await expect(editor.undo("")).toBeVisible();
  // Enter has gone one row down.
  await keyboard.type("blue");
  await keyboard.press("Tab");
  await expect(cell(editor, "W2", "base")).toHaveText("BU");
  await keyboard.type("WH");
  await keyboard.press("Enter");
  await expect(cell(editor, "W2", "tracer")).toHaveText("WH");

  // A value that is none stays in its cell and says why; Escape puts the old one back.
  await cell(editor, "W3", "size").click();
  await keyboard.type("thick");
  await keyboard.press("Enter");
  await expect(cell(editor, "W3", "size").getByRole("textbox")).toHaveAttribute("aria-invalid", "true");
  await keyboard.press("Escape");
  await expect(cell(editor, "W3", "size").getByRole("textbox")).toHaveCount(0);

  await cell(editor, "W3", "size").click();
  await keyboard.type("1.5");
  await keyboard.press("Enter");
  await expect(cell(editor, "W3", "size")).toHaveText("1.5");
  await keyboard.press("Control+z");
  await expect(cell(editor, "W3", "size")).not.toHaveText("1.5");
});

test("a block is copied out and pasted in as one step", async ({ editor }) => {
  const { page } = editor;
  await openTable(editor);
  await cell(editor, "W1", "label").click();
  await pasteText(editor, "A\r\nB\r\nC\r\n");
  await expectColumn(editor, "label", ["A", "B", "C", ""]);
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Shift+ArrowDown");
  await page.keyboard.press("Control+c");
  await expect.poll(() => page.evaluate(() => navigator.clipboard.readText())).toBe("A\r\nB\r\nC");
  await editor.undo("paste into the wire table").click();
  await expectColumn(editor, "label", ["", "", ""]);
});

test("a wire added in the table is drawn between the contacts that are typed", async ({ editor }) => {
  await openTable(editor);
  await editor.page.getByRole("button", { name: "Add a wire" }).click();
  await expect(editor.wires).toHaveAttribute("aria-rowcount", "10");
  await editor.page.keyboard.type("X1.1");
  await editor.page.keyboard.press("Tab");
  await editor.page.keyboard.type("X2.4");
  await editor.page.keyboard.press("Enter");
  await expect(editor.contact("X2.4")).toHaveAccessibleName(/W9 to X1\.1/);
});

test("sorting and filtering change what is shown, not the harness", async ({ editor }) => {
  await openTable(editor);
  const head = editor.wires.getByRole("button", { name: "Wire", exact: true });
  await head.click();
  await head.click();
  await expect(editor.wires.getByRole("columnheader", { name: /^Wire/ })).toHaveAttribute(
    "aria-sort",
    "descending",
  );
  await expectColumn(editor, "number", ["W8"]);
  await editor.page.getByRole("searchbox", { name: "Show only wires that hold" }).fill("illumination");
  await expect(editor.page.getByText("2 of 8 wires")).toBeVisible();
  await expect.poll(async () => (await column(editor, "number")).sort()).toEqual(["W7", "W8"]);
  await editor.page.getByRole("searchbox").fill("nothing like it");
  await expect(editor.page.getByText("No wire holds that.")).toBeVisible();
  await editor.page.getByRole("searchbox").fill("");
  await expect(editor.wires.getByRole("row")).toHaveCount(9);
  await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true");
});

test("table and drawing select the same wires", async ({ editor }) => {
  await openTable(editor);
  await cell(editor, "W5", "number").click();
  await expect(editor.status).toContainText("W5, black");
  await expect(editor.row("W5")).toHaveAttribute("aria-selected", "true");
  await editor.page.getByLabel("Drawing", { exact: true }).focus();
  for (const key of ["Escape", "Escape", "Escape", "ArrowRight", "Enter", "ArrowRight"])
    await editor.page.keyboard.press(key);
  await expect(editor.row("W1")).toHaveAttribute("aria-selected", "true");
  await editor.page.keyboard.press("Delete");
  await expect(editor.row("W1")).toHaveCount(0);
  await expect(editor.wires).toHaveAttribute("aria-rowcount", "8");
});
