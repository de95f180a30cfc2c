import { SAMPLE_LIST } from "../../samples/list.ts";
import { expect, test } from "./page.ts";

for (const { id, title } of SAMPLE_LIST) {
  test(`the sample "${title}" opens, drawn and without an error`, async ({ editor }) => {
    await editor.open(`./?sample=${id}`);
    await expect(editor.drawing.getByRole("group").first()).toBeVisible();
    await expect(editor.status).toContainText(/[1-9]\d* parts, [1-9]\d* wires/);
    await expect(editor.page.getByRole("alert")).toHaveText("");
    await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute(
      "aria-disabled",
      "true",
    );
  });
}

test("samples are opened from a menu, as copies", async ({ editor }) => {
  await editor.open();
  await editor.page.getByRole("button", { name: "Open a sample" }).click();
  const dialog = editor.dialog("Samples");
  await expect(dialog.getByRole("listitem")).toHaveCount(SAMPLE_LIST.length);
  const [first] = SAMPLE_LIST;
  await dialog.getByRole("button", { name: first!.title }).click();
  await expect(dialog).toBeHidden();
  await expect(editor.drawing.getByRole("group").first()).toBeVisible();
  await expect(editor.header).not.toContainText("keeping");
  const before = await editor.status.textContent();
  await editor.reload();
  await expect(editor.drawing.getByRole("group").first()).toBeVisible();
  await expect(editor.status).toHaveText(before ?? "");
});

test("a sample that does not exist is said, and the page still works", async ({ editor }) => {
  await editor.open("./?sample=no-such-thing");
  await expect(editor.page.getByRole("alert")).toContainText("There is no sample called no-such-thing");
});

test("while the largest sample is arranged, the page answers", async ({ editor }) => {
  const { page } = editor;
  await editor.open("./?sample=full-build");
  await expect(editor.drawing.getByRole("group").first()).toBeVisible();
  await editor.run("Arrange the drawing");
  // The wire table opens, by a click, before the arrangement has come.
  await page.getByRole("button", { name: "Wire table" }).click();
  await expect(editor.wires).toBeVisible();
  await expect(editor.header.getByRole("button", { name: "Undo" })).toHaveAttribute("aria-disabled", "true");
  await expect(editor.undo("arrange")).toBeVisible({ timeout: 30_000 });
});
