import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { parse, serialise } from "../../src/graph/parse/parse.ts";
import { joinedPlugs } from "./harnesses.ts";
import { EditorPage, expect, expectAccessible, test } from "./page.ts";

const ours = joinedPlugs();

/** Saves, and gives what landed in the person's downloads. */
async function saved(editor: EditorPage): Promise<{ name: string; text: string }> {
  const download = editor.page.waitForEvent("download");
  await editor.press("Control+s");
  const file = await download;
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), "utf8") };
}

/** Puts a person's file over the page and lets it go there. */
async function dropFile(page: Page, name: string, text: string): Promise<void> {
  const data = await page.evaluateHandle(
    ([fileName, content]) => {
      const carried = new DataTransfer();
      carried.items.add(new File([content], fileName, { type: "application/json" }));
      return carried;
    },
    [name, text] as const,
  );
  await page.dispatchEvent("body", "dragover", { dataTransfer: data });
  await page.dispatchEvent("body", "drop", { dataTransfer: data });
}

test("a file that is opened and saved is the same file", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(ours, "wren.harness.json");
  const first = await saved(editor);
  expect(first.name).toBe("wren.harness.json");
  await expect(editor.header).toContainText("saved");
  const read = parse(first.text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  // The wires' paths are new; all that a person drew is as it was.
  const { layout, ...drawn } = read.harness;
  expect(drawn).toEqual({ ...ours, layout: undefined });
  expect(layout.places).toEqual(ours.layout.places);
  await editor.chooseFile("again.harness.json", first.text);
  await expect(editor.heading("again")).toBeAttached();
  expect((await saved(editor)).text).toBe(first.text);
});

test("a file with mistakes says where they are, and what was open stays open", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(ours, "wren.harness.json");
  await editor.chooseFile("bad.harness.json", serialise(ours).replace('"p:X2"', '"p:X9"'));
  const dialog = editor.dialog("bad.harness.json cannot be opened");
  await expect(dialog).toBeVisible();
  await expect(dialog.getByRole("listitem").first()).toContainText(/Line \d+, column \d+/);
  await expect(dialog.getByRole("listitem").filter({ hasText: "p:X9" }).first()).toBeVisible();
  await dialog.getByRole("button", { name: "Close" }).click();
  await expect(dialog).toBeHidden();
  await expect(editor.heading("wren")).toBeAttached();

  await editor.chooseFile("photo.json", "\u0000\u0001 not a harness at all");
  await expect(editor.dialog("photo.json cannot be opened")).toBeVisible();
  await editor.page.keyboard.press("Escape");
  await expect(editor.dialog("photo.json cannot be opened")).toBeHidden();
});

test("a file dragged onto the page is opened", async ({ editor }) => {
  await editor.open();
  await dropFile(editor.page, "dropped.harness.json", serialise(ours));
  await expect(editor.heading("dropped")).toBeAttached();
  await expect(editor.status).toContainText("6 parts, 8 wires");
});

test("what was drawn is there after a reload, and among the recent harnesses", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(ours, "first.harness.json");
  await editor.kept();
  await editor.run("New harness");
  await expect(editor.heading("Untitled harness")).toBeAttached();
  await editor.reload();
  await expect(editor.heading("Untitled harness")).toBeAttached();

  await editor.run("Recent harnesses");
  const recent = editor.dialog("Recent harnesses");
  await expect(recent.getByRole("listitem")).toHaveCount(1);
  await recent.getByRole("button", { name: /^first/ }).click();
  await expect(recent).toBeHidden();
  await expect(editor.status).toContainText("6 parts, 8 wires");
  await editor.reload();
  await expect(editor.status).toContainText("6 parts, 8 wires");

  await editor.run("New harness");
  await editor.run("Recent harnesses");
  await recent.getByRole("button", { name: "Remove first from this browser" }).click();
  await expect(recent.getByRole("listitem")).toHaveCount(0);
  await recent.getByRole("button", { name: "Put back first" }).click();
  await expect(recent.getByRole("listitem")).toHaveCount(1);
});

test("an edit is kept within a second, without being asked", async ({ editor }) => {
  await editor.page.clock.install();
  await editor.open();
  await editor.openHarness(ours, "wren.harness.json");
  await editor.kept();
  const { clock, keyboard } = editor.page;
  // The clock stands still from before the edit, so that a second is one however slow the machine is.
  await editor.press("Control+k");
  await editor.page.getByRole("combobox", { name: "What to do" }).fill("Make it a 24 V system");
  await expect(editor.page.getByRole("option").first()).toContainText("24 V");
  await clock.pauseAt((await editor.page.evaluate(() => Date.now())) + 5000);
  await keyboard.press("Enter");
  await clock.runFor(1000);
  await editor.kept();
  await clock.resume();
  await editor.reload();
  await expect(editor.status).toContainText("24 V");
});

test("two tabs on one harness: neither overwrites the other unasked", async ({ editor, context }) => {
  await editor.open();
  await editor.openHarness(ours, "wren.harness.json");
  await editor.kept();
  const second = await context.newPage();
  await second.goto("./");
  const also = second.getByRole("dialog", { name: "This harness is also open in another tab" });
  await expect(also).toBeVisible();
  await expectAccessible(second, "open in another tab");
  await also.getByRole("button", { name: "Look at it here" }).click();

  await editor.run("Make it a 24 V system");
  await editor.kept();
  const clash = second.getByRole("alertdialog", { name: "Another tab has changed this harness" });
  await expect(clash).toBeVisible();
  await expectAccessible(second, "changed in another tab");
  await second.keyboard.press("Escape");
  await expect(clash).toBeVisible();
  await clash.getByRole("button", { name: "Open the newer one here" }).click();
  await expect(clash).toBeHidden();
  await expect(second.getByRole("contentinfo")).toContainText("24 V");

  // Now the other way round, and this tab goes on with a copy of its own.
  await new EditorPage(second, []).run("Make it a 12 V system");
  const here = editor.page.getByRole("alertdialog", { name: "Another tab has changed this harness" });
  await here.getByRole("button", { name: "Continue here as a copy" }).click();
  await expect(here).toBeHidden();
  await expect(editor.status).toContainText("24 V");
  await editor.kept();
  await editor.run("Recent harnesses");
  await expect(editor.dialog("Recent harnesses").getByRole("listitem")).toHaveCount(2);
  await second.reload();
  await expect(second.getByRole("contentinfo")).toContainText("12 V");
});

test("a browser that can write files again writes over the one that was opened, unless it has changed", async ({
  editor,
}) => {
  // The browser's own private file system gives real handles without asking a person.
  await editor.page.addInitScript(() => {
    const own = (name: string) =>
      navigator.storage.getDirectory().then((folder) => folder.getFileHandle(name, { create: true }));
    Object.assign(window, {
      showOpenFilePicker: async () => [await own("wren.harness.json")],
      showSaveFilePicker: (asked: { suggestedName: string }) => own(asked.suggestedName),
    });
  });
  const onDisk = () =>
    editor.page.evaluate(async () => {
      const folder = await navigator.storage.getDirectory();
      return (await (await folder.getFileHandle("wren.harness.json")).getFile()).text();
    });
  const putOnDisk = (text: string) =>
    editor.page.evaluate(async (content) => {
      const folder = await navigator.storage.getDirectory();
      const file = await (await folder.getFileHandle("wren.harness.json", { create: true })).createWritable();
      await file.write(content);
      await file.close();
    }, text);
  await editor.open();
  await putOnDisk(serialise(ours));
  await editor.press("Control+o");
  await expect(editor.heading("wren")).toBeAttached();
  await editor.run("Make it a 24 V system");
  await expect(editor.header).toContainText("not yet in the file");
  await editor.press("Control+s");
  await expect(editor.header).toContainText("saved");
  expect(await onDisk()).toContain('"systemVoltage_V": 24');

  await putOnDisk(serialise(ours));
  await editor.run("Make it a 12 V system");
  await editor.press("Control+s");
  const changed = editor.page.getByRole("alertdialog", { name: "wren.harness.json has changed on disk" });
  await expect(changed).toBeVisible();
  await expectAccessible(editor.page, "changed on disk");
  await changed.getByRole("button", { name: "Do not save" }).click();
  expect(await onDisk()).toBe(serialise(ours));
  await editor.press("Control+s");
  await changed.getByRole("button", { name: "Replace it with mine" }).click();
  await expect(editor.header).toContainText("saved");
  expect(await onDisk()).not.toBe(serialise(ours));
});
