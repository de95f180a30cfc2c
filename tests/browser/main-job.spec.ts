import { type EditorPage, expect, middleOf, type Spot, test } from "./page.ts";
import { textOfPdf } from "./pdf-text.ts";

test.use({ viewport: { width: 1600, height: 1000 } });

const VAN = [
  ["Cavity", "Function", "Colour", "Size"],
  ["1", "Constant feed", "RD", "1.5"],
  ["2", "Switched feed", "YE", "0.75"],
  ["3", "Ground", "BK", "1.5"],
  ["4", "Speaker front left +", "WH", "0.75"],
  ["5", "Speaker front left −", "WH/BK", "0.75"],
  ["6", "Speaker front right +", "GY", "0.75"],
  ["7", "Speaker front right −", "GY/BK", "0.75"],
  ["8", "Vehicle speed", "PK", "0.5"],
];
const RECEIVER = [
  ["1", "Constant feed", "YE", "1.5"],
  ["2", "Switched feed", "RD", "0.75"],
  ["3", "Ground", "BK", "1.5"],
  ["4", "Speaker front left +", "GN", "0.75"],
  ["5", "Speaker front left −", "GN/BK", "0.75"],
  ["6", "Speaker front right +", "VT", "0.75"],
  ["7", "Speaker front right −", "VT/BK", "0.75"],
];
const rows = (chart: readonly (readonly string[])[]) => chart.map((row) => row.join("\t")).join("\n");

/** A spot of bare paper between the two plugs, on the row of a contact. */
async function bareSpotBeside(editor: EditorPage, contact: string): Promise<Spot> {
  const { x, y } = await middleOf(editor.contact(contact));
  return { x: x + 110, y };
}

/** Draws a lead to bare paper and says what it ends in. */
async function endIn(editor: EditorPage, contact: string, end: string): Promise<void> {
  await editor.dragTo(editor.contact(contact), await bareSpotBeside(editor, contact));
  await editor.page
    .getByRole("menu", { name: "What the lead ends in" })
    .getByRole("menuitem", { name: end })
    .click();
}

test("the main job: draw an adapter, watch it being checked, print it, find it again", async ({ editor }) => {
  const { page } = editor;
  test.setTimeout(120_000);
  await editor.open();

  await test.step("the vehicle's connector, its chart pasted", async () => {
    await page.getByRole("button", { name: "New adapter: two connectors" }).click();
    const dialog = editor.dialog("The vehicle's connector");
    await dialog.getByLabel("Name").fill("radio plug of the van");
    await dialog.getByRole("radio", { name: /the mating face/ }).check();
    await dialog.getByRole("radio", { name: /pasted/ }).check();
    await dialog.getByLabel(/Rows from a spreadsheet/).fill(rows(VAN));
    await expect(dialog.getByRole("status").first()).toContainText(
      "8 rows under a row of heads, 8 with a known function",
    );
    await dialog.getByRole("button", { name: "Add X1, then the other side" }).click();
  });

  await test.step("the receiver's connector, counted, then filled in from its chart", async () => {
    const dialog = editor.dialog("The new equipment's connector");
    await dialog.getByLabel("Name").fill("receiver");
    await dialog.getByRole("button", { name: "Add X2" }).click();
    await expect(dialog.getByText("Say from which side you see the cavities")).toBeVisible();
    await dialog.getByRole("radio", { name: /the wire side/ }).check();
    await dialog.getByLabel("Number of cavities").fill("7");
    await dialog.getByRole("button", { name: "Add X2" }).click();
    await expect(dialog).toBeHidden();
    await editor.run("Paste rows into X2");
    const paste = editor.dialog("Paste rows into X2");
    await paste.getByLabel(/Rows from a spreadsheet/).fill(rows(RECEIVER));
    await paste.getByRole("button", { name: "Write 7 rows into X2" }).click();
    await expect(paste).toBeHidden();
    await page.getByLabel("Drawing", { exact: true }).focus();
    await page.keyboard.press("0");
    await expect(editor.contact("X1.1")).toBeVisible();
    await expect(editor.contact("X2.7")).toHaveAccessibleName(/speaker front right −/);
  });

  await test.step("an unterminated wire is found, and is gone when it lands", async () => {
    await endIn(editor, "X1.1", "Leave it loose");
    const loose = editor.finding(/W1.*ends loose/);
    await expect(loose).toBeVisible();
    await editor.join("X1.1", "X2.2");
    await expect(loose).toHaveCount(0);
  });

  await test.step("constant and switched swapped: found, undone by name, joined right", async () => {
    const swapped = editor.finding("Constant and switched are swapped");
    await expect(swapped).toHaveCount(0);
    await editor.join("X1.2", "X2.1");
    await expect(swapped).toBeVisible();
    await expect(swapped).toContainText("fault");
    const undo = editor.header.getByRole("button", { name: /^Undo: join X1.* to X2/ });
    await undo.click();
    await expect(swapped).toHaveCount(0);
    await undo.click();
    await expect(editor.contact("X1.1")).toHaveAccessibleName(/loose end/);
    await editor.join("X1.1", "X2.1");
    await editor.join("X1.2", "X2.2");
    await expect(swapped).toHaveCount(0);
    await editor.join("X1.3", "X2.3");
  });

  await test.step("a swapped speaker pair: found, put right by its button, undone, done again", async () => {
    await editor.join("X1.6", "X2.6");
    await editor.join("X1.7", "X2.7");
    await editor.join("X1.4", "X2.5");
    await editor.join("X1.5", "X2.4");
    const reversed = editor.finding(/reversed.*front left/);
    await expect(reversed).toBeVisible();
    await expect(reversed).toContainText("front left");
    await reversed.getByRole("button", { name: /^Exchange/ }).click();
    await expect(reversed).toHaveCount(0);
    const undo = editor.header.getByRole("button", { name: /^Undo: exchange/i });
    await undo.click();
    await expect(reversed).toBeVisible();
    await editor.header.getByRole("button", { name: /^Redo: exchange/i }).click();
    await expect(reversed).toHaveCount(0);
  });

  const spare = editor.finding(/X1\.8.*has no cap/);
  await test.step("an uncapped spare: found, capped by hand, gone", async () => {
    await expect(spare).toBeVisible();
    await endIn(editor, "X1.8", "Cap it: a spare");
    await expect(spare).toHaveCount(0);
    await expect(editor.contact("X1.8")).toHaveAccessibleName(/to XC1/);
    await page.keyboard.press("Control+z");
    await expect(spare).toBeVisible();
  });

  await test.step("a wire gets another colour", async () => {
    await editor.part("X1").click({ position: { x: 20, y: 12 } });
    await page.keyboard.press("Enter");
    await page.keyboard.press("ArrowRight");
    await page.keyboard.press("i");
    const details = page.getByRole("complementary", { name: "Details" });
    await expect(details.getByRole("heading").first()).toContainText("wire");
    await details.getByRole("radio", { name: "violet, VT" }).first().check({ force: true });
    await expect(details.getByRole("heading").first()).toContainText("VT");
    await page.keyboard.press("Escape");
    await page.keyboard.press("Alt+c");
  });

  await test.step("the drawing is arranged, as one step", async () => {
    await editor.header.getByRole("button", { name: "Arrange the drawing" }).click();
    await expect(editor.undo("arrange")).toBeVisible({ timeout: 30_000 });
    await expect(spare).toBeVisible();
  });

  await test.step("its papers say what the screen says", async () => {
    await editor.header.getByRole("button", { name: "Print or save the diagram" }).click();
    const dialog = editor.dialog("Print or save the diagram");
    await expect(dialog.getByRole("img", { name: "The first page" })).toBeVisible();
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save PDF" }).click();
    const file = await download;
    expect(file.suggestedFilename()).toMatch(/\.pdf$/);
    const text = await textOfPdf(file);
    for (const word of ["X1", "X2", "XJ1", "W1", "W14", "constant feed", "radio plug of the van"]) {
      expect(text).toContain(word);
    }
    expect(text).toMatch(/X1\.8.*has no cap/);
    await dialog.getByRole("button", { name: "Close" }).click();
    await expect(dialog).toBeHidden();
  });

  await test.step("after a reload it is all there", async () => {
    const names = () =>
      editor.drawing
        .getByRole("button", { name: /^X\d\.\d/ })
        .evaluateAll((contacts) => contacts.map((contact) => contact.getAttribute("aria-label")));
    await editor.press("Escape");
    await editor.kept();
    const before = await names();
    expect(before.length).toBe(15);
    await editor.reload();
    await expect(editor.part("X1")).toBeVisible();
    await expect(editor.part("X1")).toHaveAccessibleName(/radio plug of the van, 8 contacts/);
    await expect(editor.contact("X2.7")).toHaveAccessibleName(/violet.*joined by W\d+/);
    await expect(spare).toBeVisible();
    await expect.poll(names).toEqual(before);
  });
});
