import { joinedPlugs } from "./harnesses.ts";
import { expect, test } from "./page.ts";

test.use({ serviceWorkers: "allow" });

test("once it has been open, the editor opens and works without a network", async ({ editor, context }) => {
  const { page } = editor;
  await editor.open();
  await expect(editor.status).toContainText("opens without a network", { timeout: 20_000 });
  await editor.openHarness(joinedPlugs());
  await editor.kept();
  await context.setOffline(true);
  await editor.reload();
  await expect(editor.status).toContainText("6 parts, 8 wires");
  // What is fetched only on asking is there as well: dialogs, the layout engine, the samples.
  await editor.run("Arrange the drawing");
  await expect(editor.undo("arrange")).toBeVisible({ timeout: 20_000 });
  await editor.press("Control+p");
  await expect(page.getByRole("dialog").first()).toBeVisible();
  await page.keyboard.press("Escape");
  await editor.run("Open a sample");
  await page
    .getByRole("dialog", { name: "Samples" })
    .getByRole("listitem")
    .getByRole("button")
    .first()
    .click();
  await expect(page).toHaveURL(/sample=/);
  await expect(editor.status).toContainText(/\d+ wires/);
  await context.setOffline(false);
});
