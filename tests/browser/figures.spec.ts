import { type EditorPage, expect, expectAccessible, test } from "./page.ts";

const panelOf = (editor: EditorPage) => editor.page.getByRole("complementary", { name: "Figures" });

/** Opens a sample with the figures beside it. */
async function openFigures(editor: EditorPage, id: string) {
  await editor.open(`./?sample=${id}`);
  await expect(editor.part("XE1")).toBeVisible();
  await editor.run("Show figures");
  await expect(panelOf(editor).getByText(/^With the key at/)).toBeVisible();
  return panelOf(editor);
}

test("a wire's drop is read, and asked why by key: formula, table, source, doubt", async ({ editor }) => {
  const panel = await openFigures(editor, "work-lamp-relay");
  await editor.page.getByRole("checkbox", { name: "S1 closed" }).check();
  await editor.find("W8");
  await expect(panel.getByRole("heading", { name: "W8 wire" })).toBeVisible();
  const drop = panel.getByRole("listitem").filter({ hasText: "Drop along it" });
  await expect(drop).toContainText(/0\.4\d V/);
  const why = panel.getByRole("button", { name: "Why: Drop along it" });
  await expect(why).toHaveAttribute("aria-expanded", "false");
  await why.focus();
  await editor.page.keyboard.press("Enter");
  await expect(why).toHaveAttribute("aria-expanded", "true");
  await expect(drop).toContainText(/ΔU = R · I = .* mΩ × .* A = 0\.4\d+ V/);
  await expect(drop).toContainText("IEC 60228");
  await expect(drop.getByRole("term")).toHaveText(["Formula", "Table", "Source", "Doubt"]);
  await editor.page.keyboard.press("Enter");
  await expect(drop.getByRole("term")).toHaveCount(0);
});

test("a load's budget stands stretch by stretch, and each stretch is shown on the drawing", async ({
  editor,
}) => {
  const panel = await openFigures(editor, "work-lamp-relay");
  await editor.page.getByRole("checkbox", { name: "S1 closed" }).check();
  await editor.find("E1");
  const budget = panel.getByRole("article", { name: "Drop to E1" });
  await expect(budget).toContainText(/0\.\d\d V of 1\.20 V; 0\.\d\d V of it in the shared lead W8/);
  await expect(budget.getByRole("row").filter({ hasText: "return" }).first()).toBeVisible();
  await budget.getByRole("button", { name: "Show the shared lead W8 on the drawing" }).click();
  await expect(panel.getByRole("heading", { name: "W8 wire" })).toBeVisible();
});

test("what was assumed is stated where it is told, and is then no longer assumed", async ({ editor }) => {
  const panel = await openFigures(editor, "work-lamp-relay");
  await editor.find("W8");
  await panel.getByRole("button", { name: /^Taken for granted/ }).click();
  await panel.getByRole("button", { name: "State the metal of W8" }).click();
  const metal = panel.getByRole("combobox", { name: "Metal" });
  await expect(metal).toBeFocused();
  await metal.selectOption("copper");
  await expect(panel.getByRole("button", { name: "State the metal of W8" })).toHaveCount(0);
});

test("the harness is sized: looked at, taken as one step, and taken back by undo", async ({ editor }) => {
  const panel = await openFigures(editor, "amplified-sound");
  await panel.getByRole("button", { name: "Sizes", exact: true }).click();
  const wires = panel.getByRole("table", { name: "Wires" });
  await expect(wires.getByRole("row").filter({ hasText: "W2" })).toContainText(/10 mm².*16 mm²/);
  await expect(panel.getByRole("table", { name: "Fuses" })).toContainText("blue BU");
  await panel.getByRole("button", { name: /^Look at \d+ changes/ }).click();
  const preview = panel.getByRole("region", { name: "What would change" });
  await expect(preview).toBeFocused();
  await expect(preview).toContainText("F1: 40 A → 60 A");
  await preview.getByRole("button", { name: /^Make \d+ changes/ }).click();
  await expect(panel).toContainText("Every wire and fuse here is as large as it needs to be.");
  await expect(editor.undo("size wires and fuses")).toBeVisible();
  await editor.page.keyboard.press("Control+z");
  await expect(panel.getByRole("button", { name: /^Look at \d+ changes/ })).toBeVisible();
});

test("what if the battery were at 11 V: typed, answered, put back", async ({ editor }) => {
  const panel = await openFigures(editor, "work-lamp-relay");
  const volts = panel.getByRole("listitem").filter({ hasText: "Volts of the battery" });
  await panel.getByRole("button", { name: /^What if/ }).click();
  const typed = panel.getByRole("textbox", { name: "Battery, V" });
  await typed.fill("11");
  await typed.press("Enter");
  await expect(volts).toContainText("11.00 V");
  await expect(panel.getByRole("slider", { name: "Battery" })).toHaveValue("11");
  await panel.getByRole("slider", { name: "Battery" }).press("ArrowRight");
  await expect(volts).toContainText("11.10 V");
  await typed.fill("900");
  await typed.press("Enter");
  await expect(panel.getByRole("alert").filter({ hasText: "between" })).toBeVisible();
  await panel.getByRole("button", { name: "Back to how it is" }).click();
  await expect(volts).not.toContainText("11.10 V");
});

test("the whole harness: a short circuit, drain, speakers, bundles and lengths", async ({ editor }) => {
  const panel = await openFigures(editor, "amplified-sound");
  await panel.getByRole("button", { name: "Whole harness", exact: true }).click();
  await panel.getByRole("button", { name: "Short circuit at a point" }).click();
  await panel.getByRole("textbox", { name: "Contact" }).fill("F1.2");
  await panel.getByRole("button", { name: "Short it" }).click();
  await expect(panel).toContainText(/F1\.2 touching the frame: \d+ A/);
  await panel.getByRole("button", { name: "Drain with the key off" }).click();
  await expect(panel.getByRole("table", { name: "What draws, the most first" })).toBeVisible();
  await panel.getByRole("button", { name: "Speakers" }).click();
  await expect(panel.getByText("Plus on plus.").first()).toBeVisible();
  await panel.getByRole("button", { name: "Bundles by run" }).click();
  await expect(panel.getByRole("img", { name: /9 wires in a circle of \d+\.\d mm/ })).toBeVisible();
  await panel.getByRole("button", { name: "Lengths and cost" }).click();
  await expect(panel.getByRole("table", { name: "By size" })).toBeVisible();
});

async function openAll(editor: EditorPage, place: ReturnType<typeof panelOf>): Promise<void> {
  for (const name of ["Drain with the key off", "Speakers", "Bundles by run", "Lengths and cost"])
    await place.getByRole("button", { name }).click();
  await expect(place.getByRole("table", { name: "By size" })).toBeVisible();
  await expectAccessible(editor.page, "the whole harness");
}

test("axe finds nothing wrong with the figures", async ({ editor }) => {
  test.setTimeout(120_000);
  const panel = await openFigures(editor, "amplified-sound");
  await panel.getByRole("button", { name: /^What if/ }).click();
  await editor.find("W2");
  await panel.getByRole("button", { name: "Why: Drop along it" }).click();
  for (const name of ["What they rest on", /^Taken for granted/, "If it touched the frame"])
    await panel.getByRole("button", { name }).click();
  await expectAccessible(editor.page, "a wire");
  await panel.getByRole("button", { name: "Sizes", exact: true }).click();
  await panel.getByRole("button", { name: /^Look at/ }).click();
  await expect(panel.getByRole("region", { name: "What would change" })).toBeVisible();
  await expectAccessible(editor.page, "sizes");
  await panel.getByRole("button", { name: "Whole harness", exact: true }).click();
  await openAll(editor, panel);
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  test("figures are one of the things shown, and axe finds nothing wrong", async ({ editor }) => {
    test.setTimeout(120_000);
    await editor.open("./?sample=amplified-sound");
    await editor.page.getByRole("navigation").getByRole("button", { name: "Figures" }).tap();
    const place = editor.page.getByRole("region", { name: "figures" });
    await place.getByRole("button", { name: "Change the state" }).tap();
    await place.getByRole("combobox", { name: "Key" }).selectOption("accessory");
    await expect(place.getByText(/^With the key at/)).toContainText("accessory");
    await expectAccessible(editor.page, "the harness");
    await place.getByRole("button", { name: "Whole harness", exact: true }).tap();
    await openAll(editor, place);
    expect(await editor.page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  });
});
