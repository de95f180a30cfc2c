import { strToU8, zipSync } from "fflate";
import { expect, test } from "./page.ts";
import { textOfPdf } from "./pdf-text.ts";
import {
  AT_A_DESK,
  answerAll,
  focused,
  Hand,
  make,
  pasteBoth,
  row,
  rows,
  screen,
  section,
  side,
} from "./two-charts.ts";

test.use(AT_A_DESK);

test("two charts of 16 leads become a checked and drawn harness in at most 12 actions; undone in one", async ({
  editor,
}) => {
  test.setTimeout(120_000);
  const { page } = editor;
  const hand = new Hand(page);
  await editor.open();

  await test.step("taken in, reviewed, accepted", async () => {
    await hand.click("Join two charts");
    await pasteBoth(editor, hand);
    // The receiver has flying leads, so only the van's plug has a face.
    await hand.click("the mating face");
    await hand.click("Review the joins");
    await hand.click(/^Accept \d+ joins/);
    await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();
    await answerAll(editor, hand);
    const caps = screen(editor).getByRole("button", { name: /^Accept \d+ cap/ });
    if (await caps.isVisible()) await hand.click(/^Accept \d+ cap/);
    await expect(screen(editor)).toContainText("Everything is decided");
    await hand.click(/^Make \d+ joints/);
    await expect(screen(editor)).toBeHidden({ timeout: 30_000 });
    expect(hand.count).toBeLessThanOrEqual(12);
  });

  await test.step("it is drawn, with both charts' words, functions and colours, and checked", async () => {
    await expect(editor.part("X1")).toHaveAccessibleName(/16 contacts/);
    await expect(editor.part("X2")).toHaveAccessibleName(/16 contacts/);
    await expect(editor.contact("X1.1")).toHaveAccessibleName(/constant feed.*red.*joined by W\d+/);
    await expect(editor.contact("X2.YE")).toHaveAccessibleName(/constant feed.*yellow.*joined by W\d+/);
    await expect(editor.contact("X1.2")).toHaveAccessibleName(/switched feed.*joined by W\d+/);
    await expect(editor.contact("X1.6")).toHaveAccessibleName(/to XC\d+/);
    await expect(editor.findings).not.toContainText(/swapped|reversed|has no cap/);
  });

  await test.step("its joints are in the papers", async () => {
    await editor.header.getByRole("button", { name: "Print or save the diagram" }).click();
    const dialog = editor.dialog("Print or save the diagram");
    const download = page.waitForEvent("download");
    await dialog.getByRole("button", { name: "Save PDF" }).click();
    const text = await textOfPdf(await download);
    expect(text).toContain("Joint table");
    expect(text).toMatch(
      /XJ\d+ W\d+ X1\.1 RD S soldered, in a sleeve with adhesive W\d+ X2\.YE YE constant feed/,
    );
    await page.keyboard.press("Escape");
  });

  await test.step("coming back finds it decided", async () => {
    await editor.press("Alt+j");
    await expect(row(editor, /vehicle 1 .*The harness has it so/)).toBeVisible();
    await expect(section(editor, /^Questions/)).toHaveCount(0);
    await expect(screen(editor)).toContainText("Everything is decided");
    await page.keyboard.press("Escape");
    await expect(screen(editor)).toBeHidden();
  });

  await test.step("one undo takes all of it away, one redo brings it back", async () => {
    await editor.undo("join X1 and X2 by their charts").click();
    await expect(page.getByRole("heading", { name: "An empty sheet" })).toBeVisible();
    await page.keyboard.press("Control+y");
    await expect(editor.part("X2")).toBeVisible();
  });
});

test("all of it by keys: joints are taken apart, swapped, joined anew, capped and made another way", async ({
  editor,
}) => {
  test.setTimeout(120_000);
  const { page } = editor;
  const hand = new Hand(page);
  await editor.open();
  await editor.press("Alt+j");
  await pasteBoth(editor, hand);
  await expect(focused(editor)).toHaveAccessibleName("the mating face");
  await hand.press("Space");
  await expect(focused(editor)).toHaveAccessibleName("Review the joins");
  await hand.press("Enter");
  await expect(focused(editor)).toHaveAccessibleName(/^Accept \d+ joins/);
  await hand.press("Enter");
  await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();
  await answerAll(editor, hand);
  expect(hand.count).toBeLessThanOrEqual(11);

  await test.step("swapped, and swapped back by undo", async () => {
    await row(editor, /^vehicle 8 /).focus();
    await page.keyboard.press("s");
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("s");
    await expect(row(editor, /^vehicle 8 .*new unit WH\/BK/)).toBeVisible();
    await expect(row(editor, /^vehicle 9 .*new unit WH /)).toBeVisible();
    await page.keyboard.press("Control+z");
    await expect(row(editor, /^vehicle 8 .*new unit WH /)).toBeVisible();
  });

  await test.step("taken apart, and joined anew by name", async () => {
    await row(editor, /^vehicle 10 /).focus();
    await page.keyboard.press("u");
    await expect(row(editor, /^vehicle 10 [^,]*: Open/)).toBeVisible();
    await row(editor, /^vehicle 10 [^,]*: Open/).focus();
    await page.keyboard.press("j");
    await expect(focused(editor)).toHaveAccessibleName(/^Join 10 /);
    await page.keyboard.type("front right +");
    await page.keyboard.press("Enter");
    await expect(row(editor, /^vehicle 10 .*new unit GY .*You joined them/)).toBeVisible();
  });

  await test.step("taken apart and capped", async () => {
    await row(editor, /^vehicle 15 /).focus();
    await page.keyboard.press("u");
    await row(editor, /^vehicle 15 [^,]*: Open/).focus();
    await page.keyboard.press("c");
    await expect(row(editor, /^vehicle 15 [^,]*: Capped/)).toBeVisible();
  });

  await test.step("one joint made another way", async () => {
    await row(editor, /^vehicle 1 /).focus();
    await page.keyboard.press("k");
    await expect(focused(editor)).toHaveRole("combobox");
    await page.keyboard.type("bullet");
    await expect(focused(editor)).toHaveValue("bullet-pair");
  });

  await page.keyboard.press("Control+Enter");
  await expect(screen(editor)).toBeHidden({ timeout: 30_000 });
  await expect(editor.contact("X1.15")).toHaveAccessibleName(/to XC\d+/);
  await expect(editor.contact("X1.10")).toHaveAccessibleName(/joined by W\d+/);
  await editor.press("Alt+j");
  await row(editor, /^vehicle 1 /).focus();
  await expect(row(editor, /^vehicle 1 /).getByLabel("Joint")).toHaveValue("bullet-pair");
});

test("a review that was closed half-way is there again, after a reload too", async ({ editor }) => {
  test.setTimeout(90_000);
  const { page } = editor;
  const hand = new Hand(page);
  await editor.open();
  await hand.click("Join two charts");
  await pasteBoth(editor, hand);
  await side(editor, "The vehicle").getByRole("textbox", { name: "Name" }).fill("radio plug of Wren");
  await page.keyboard.press("Escape");
  await expect(screen(editor)).toBeHidden();

  await editor.press("Alt+j");
  await expect(rows(editor, "The vehicle")).toHaveCount(17);
  await expect(side(editor, "The vehicle").getByRole("textbox", { name: "Name" })).toHaveValue(
    "radio plug of Wren",
  );
  await screen(editor).getByRole("button", { name: "the mating face" }).click();
  await hand.click("Review the joins");
  await hand.click(/^Accept \d+ joins/);
  await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();
  await page.keyboard.press("Escape");
  await editor.press("Alt+j");
  await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();

  await editor.reload();
  await editor.press("Alt+j");
  await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();
  await screen(editor).getByRole("button", { name: "Back to the charts" }).click();
  await expect(screen(editor)).toContainText("Taken up where it was left");
  await screen(editor).getByRole("button", { name: "Start afresh" }).click();
  await expect(rows(editor, "The vehicle")).toHaveCount(0);
  await screen(editor).getByRole("button", { name: "Bring it back" }).click();
  await expect(rows(editor, "The vehicle")).toHaveCount(17);
  await hand.click("Review the joins");
  await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();
});

test("rows and lines are mended in place, and decisions follow", async ({ editor }) => {
  const { page } = editor;
  const hand = new Hand(page);
  await editor.open();
  await hand.click("Join two charts");
  await pasteBoth(editor, hand);
  const van = side(editor, "The vehicle");
  await van.getByRole("textbox", { name: "Cavity of 3" }).fill("31");
  await page.keyboard.press("Enter");
  await van.getByRole("combobox", { name: "Function of 16" }).fill("amplifier turn-on");
  await page.keyboard.press("Enter");
  await van.getByRole("textbox", { name: "Colour of 4" }).fill("blue with green");
  await page.keyboard.press("Enter");
  await van.getByRole("textbox", { name: "Colour of 5" }).fill("no such colour");
  await page.keyboard.press("Enter");
  await expect(van.getByRole("alert").filter({ hasText: "is not a colour" })).toBeVisible();
  await page.keyboard.press("Escape");
  await van.getByRole("button", { name: "Add a row" }).click();
  await van.getByRole("combobox", { name: "Function of 17" }).fill("parking brake");
  await page.keyboard.press("Enter");
  await van.getByRole("button", { name: "the wire side" }).click();
  await hand.click("Review the joins");
  await expect(row(editor, /^vehicle 31 .*new unit BK /)).toBeVisible();
  await expect(row(editor, /^vehicle 16 .*new unit BU\/WH /)).toBeVisible();
  await hand.click(/^Accept \d+ joins/);
  await hand.click("Back to the charts");
  await van.getByRole("textbox", { name: "Cavity of 31" }).fill("3");
  await page.keyboard.press("Enter");
  await hand.click("Review the joins");
  await expect(row(editor, /^vehicle 3 .*new unit BK .*Accepted/)).toBeVisible();
});

test("one paste that holds both charts side by side fills both sides", async ({ editor }) => {
  const hand = new Hand(editor.page);
  await editor.open();
  await hand.click("Join two charts");
  await expect(focused(editor)).toHaveRole("textbox");
  const lines = [
    "Pin\tFunction\tColour\t\tPin\tFunction\tColour",
    "1\tConstant feed\tRD\t\tA4\tBattery +12 V\tYE",
    "2\tSwitched feed\tYE\t\tA7\tIgnition switched feed\tRD",
    "3\tGround\tBK\t\tA8\tGround\tBK",
    "4\tIllumination\tOG\t\tA6\tIllumination\tOG/WH",
  ];
  await hand.paste(lines.join("\n"));
  await expect(rows(editor, "The vehicle")).toHaveCount(5);
  await expect(rows(editor, "The new unit")).toHaveCount(5);
  await expect(side(editor, "The new unit").getByRole("textbox", { name: "Cavity of A4" })).toHaveValue("A4");
});

/** A workbook of one sheet, as small as one can be. */
function workbook(rows: readonly (readonly string[])[]): Buffer {
  const at = (column: number, line: number) => `${String.fromCharCode(65 + column)}${line}`;
  const sheet = rows
    .map((row, index) => {
      const cells = row.map(
        (text, column) => `<c r="${at(column, index + 1)}" t="inlineStr"><is><t>${text}</t></is></c>`,
      );
      return `<row r="${index + 1}">${cells.join("")}</row>`;
    })
    .join("");
  const main = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
  const relations = "http://schemas.openxmlformats.org/package/2006/relationships";
  const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  const files: Record<string, string> = {
    "[Content_Types].xml": '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
    "_rels/.rels": `<Relationships xmlns="${relations}"><Relationship Id="r1" Type="${office}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    "xl/workbook.xml": `<workbook ${main} xmlns:r="${office}"><sheets><sheet name="Plug" sheetId="1" r:id="r1"/></sheets></workbook>`,
    "xl/_rels/workbook.xml.rels": `<Relationships xmlns="${relations}"><Relationship Id="r1" Type="${office}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    "xl/styles.xml": `<styleSheet ${main}><cellXfs><xf numFmtId="0"/></cellXfs></styleSheet>`,
    "xl/worksheets/sheet1.xml": `<worksheet ${main}><sheetData>${sheet}</sheetData></worksheet>`,
  };
  return Buffer.from(
    zipSync(Object.fromEntries(Object.entries(files).map(([name, text]) => [name, strToU8(text)]))),
  );
}

test("a spreadsheet is chosen as a file, a ready connector is taken, and the two are drawn", async ({
  editor,
}) => {
  test.setTimeout(90_000);
  await editor.open();
  await editor.press("Alt+j");
  await side(editor, "The vehicle")
    .locator("input[type=file]")
    .setInputFiles({
      name: "plug.xlsx",
      mimeType: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
      buffer: workbook([
        ["Pin", "Function", "Colour"],
        ["1", "Constant feed", "red"],
        ["2", "Switched feed", "yellow"],
        ["3", "Ground", "black"],
      ]),
    });
  await expect(rows(editor, "The vehicle")).toHaveCount(4);
  await side(editor, "The new unit")
    .getByRole("combobox", { name: /take a connector/ })
    .selectOption({ label: "ISO 10487 block A, power" });
  await expect(rows(editor, "The new unit")).toHaveCount(9);
  await side(editor, "The vehicle").getByRole("button", { name: "the wire side" }).click();
  await side(editor, "The new unit").getByRole("button", { name: "the wire side" }).click();
  await screen(editor).getByRole("button", { name: "Review the joins" }).click();
  await screen(editor)
    .getByRole("button", { name: /^Accept \d+ joins/ })
    .click();
  await expect(row(editor, /^vehicle 1 .*new unit A4 .*Accepted/)).toBeVisible();
  await make(editor).click();
  await expect(screen(editor)).toBeHidden({ timeout: 30_000 });
  await expect(editor.contact("X1.1")).toHaveAccessibleName(/constant feed.*joined by W\d+/);
  await expect(editor.contact("X2.A8")).toHaveAccessibleName(/ground.*joined by W\d+/);
});
