import { readFileSync } from "node:fs";
import { loadExample } from "../../src/rules/examples/load.ts";
import { serialiseProfile } from "../../src/rules/profile/profile-file.ts";
import { RULES, ruleOf } from "../../src/rules/registry.ts";
import { build } from "../build.ts";
import { expect, expectAccessible, test } from "./page.ts";

const FAULTY = "./?sample=wren-receiver-adapter-faults";

/** Two leads of a radio that are crossed at their joints, and a spare without a cap. */
const crossed = () =>
  build()
    .vehicle("X1", {
      A4: "constant-feed RD 1.5 fuse:15",
      A6: "illumination GY spare",
      A7: "switched-feed YE 0.75 fuse:10",
      A8: "ground BN 1.5",
    })
    .unit("X2", { "1": "constant-feed YE 1.5", "2": "switched-feed RD 0.75", "3": "ground BK 1.5" })
    .path("X1.A4", "XJ1", "X2.2")
    .path("X1.A7", "XJ2", "X2.1")
    .path("X1.A8", "XJ3", "X2.3").harness;

test("a finding says why: the way from its feed, step by step, each found on the drawing", async ({
  editor,
}) => {
  await editor.open(FAULTY);
  const finding = editor.finding("from X1.A6 illumination ends loose");
  await finding.getByRole("button", { name: /^Why:/ }).click();
  const way = finding.getByRole("list").filter({ hasText: "which ends loose" });
  await expect(way.getByRole("listitem").first()).toContainText("X1.A6 illumination");
  await way.getByRole("button", { name: /W7/ }).click();
  await expect(editor.status).toContainText("W7, grey with a red tracer");
  await expectAccessible(editor.page, "a finding that says why");
  await finding.getByRole("button", { name: /^Why:/ }).click();
  await expect(way).toBeHidden();
});

test("the worst is stepped to from the keyboard, then the next", async ({ editor }) => {
  await editor.open(FAULTY);
  await expect(editor.findings.getByRole("listitem").first()).toBeVisible();
  await editor.page.keyboard.press(".");
  const current = editor.findings.locator('[aria-current="true"]');
  await expect(current).toContainText("danger");
  const first = await current.textContent();
  await editor.page.keyboard.press(".");
  await expect(current).not.toHaveText(first ?? "");
  await editor.page.keyboard.press(",");
  await expect(current).toHaveText(first ?? "");
});

test("all that is certain is mended in one step, and undone in one", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(crossed());
  await expect(editor.finding(/swapped/)).toBeVisible();
  await expect(editor.finding("A6")).toBeVisible();
  await editor.findings.getByRole("button", { name: /^Mend what is certain/ }).click();
  await expect(editor.finding(/swapped/)).toBeHidden();
  await expect(editor.finding("A6")).toBeHidden();
  await editor.page.keyboard.press("Control+z");
  await expect(editor.finding(/swapped/)).toBeVisible();
  await expect(editor.finding("A6")).toBeVisible();
});

test("a cure that is not certain is shown on the drawing, left by Escape, then taken and undone", async ({
  editor,
}) => {
  const rule = ruleOf("antenna-power-as-turn-on")!;
  const { trips } = (await loadExample(rule))!;
  await editor.open();
  await editor.openHarness(trips());
  const finding = editor.finding("comes from A1.ANT antenna power");
  await finding.getByRole("button", { name: /^Look at:/ }).click();
  const bar = editor.page.getByRole("region", { name: "A cure, shown before it is taken" });
  await expect(bar).toContainText(/gone\. None new\./);
  await expect(bar.getByRole("button", { name: "Take it" })).toBeFocused();
  await expect(finding).toBeHidden();
  await expectAccessible(editor.page, "a cure that is shown");
  await editor.page.keyboard.press("Escape");
  await expect(bar).toBeHidden();
  await expect(finding).toBeVisible();

  await finding.getByRole("button", { name: /^Look at:/ }).click();
  await bar.getByRole("button", { name: "Take it" }).click();
  await expect(bar).toBeHidden();
  await expect(finding).toBeHidden();
  await editor.page.keyboard.press("Control+z");
  await expect(finding).toBeVisible();
});

test("a finding keeps its place while the person works on another", async ({ editor }) => {
  await editor.open(FAULTY);
  const messages = () => editor.findings.locator(".finding-message").allTextContents();
  const swapped = editor.finding("Constant and switched are swapped");
  await expect(swapped).toBeVisible();
  const before = await messages();
  await swapped.getByRole("button", { name: /^Exchange/ }).click();
  await expect(swapped).toBeHidden();
  const after = await messages();
  expect(after.filter((message) => before.includes(message))).toEqual(
    before.filter((message) => after.includes(message)),
  );
});

test("one, a kind, or a group of findings is waived with a reason", async ({ editor }) => {
  await editor.open(FAULTY);
  const spare = editor.finding("X3.2");
  await spare.getByRole("button", { name: /^Waive:/ }).click();
  await editor.page.getByRole("radio", { name: /rule spare-not-capped/ }).check();
  await editor.page.getByRole("button", { name: "Waive it" }).click();
  await expect(editor.page.getByText("Say why this may stay as it is.")).toBeVisible();
  await editor.page.getByRole("textbox", { name: "Why it may stay as it is" }).fill("The caps are on order");
  await editor.page.getByRole("button", { name: "Waive it" }).click();
  await expect(
    editor.finding("with all of the rule spare-not-capped: The caps are on order").first(),
  ).toBeVisible();
});

test("the rule book: found by a word, read with its drawings", async ({ editor }) => {
  await editor.open(FAULTY);
  await editor.run("Open the rule book");
  const book = editor.dialog("The rule book");
  await expect(book.getByRole("searchbox", { name: "Find a rule" })).toHaveAttribute(
    "placeholder",
    `Find among ${RULES.length} rules`,
  );
  await book.getByRole("searchbox", { name: "Find a rule" }).fill("bare end cap danger");
  await book.getByRole("searchbox", { name: "Find a rule" }).fill("loose-live-lead");
  await book.getByRole("button", { name: /No loose end can become live/ }).click();
  await expect(book.getByRole("img", { name: /A harness in which this is found/ })).toBeVisible();
  await expect(book.getByRole("img", { name: /looks like it and is right/ })).toBeVisible();
  await expect(book.getByRole("heading", { name: "Source" })).toBeVisible();
  await expectAccessible(editor.page, "a page of the rule book");
});

test("a shop chooses its books and writes a rule; the harness is checked by it at once", async ({
  editor,
}) => {
  await editor.open();
  await editor.openHarness(crossed());
  await editor.run("Choose by which books");
  const dialog = editor.dialog("By which books it is checked");
  await dialog.getByLabel("The harness is for a").selectOption("shop");
  await dialog.getByLabel("Name of the shop").fill("Thistledown workshop");
  const limit = dialog.getByRole("textbox", { name: /Ring terminals on one stud/ });
  await limit.fill("many");
  await limit.press("Enter");
  await expect(dialog.getByText("This is not a number")).toBeVisible();
  await limit.fill("2");
  await limit.press("Enter");
  await dialog.getByRole("button", { name: "Write a rule…" }).click();
  await dialog.getByLabel("What is so in sound work").fill("Every joint says how it is made");
  await dialog.getByLabel("It speaks of every").selectOption("joint");
  await dialog.getByLabel("How it is asked").selectOption("given");
  await expectAccessible(editor.page, "a shop's own rules");
  await dialog.getByRole("button", { name: "Keep the rule" }).click();
  await expect(dialog.getByText("Of every joint: kind is stated.")).toBeVisible();

  const download = editor.page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Save as a file" }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe("Thistledown-workshop.profile.json");
  const saved = JSON.parse(readFileSync(await file.path(), "utf8")) as { rules: { limits: unknown } };
  expect(saved.rules.limits).toEqual([{ name: "ringsOnStud", value: 2 }]);
  await editor.page.keyboard.press("Escape");
  await expect(editor.finding("Joint XJ1 is against a rule of Thistledown workshop")).toBeVisible();
});

test("a profile file with a mistake says where it is, and changes nothing", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(crossed());
  await editor.run("Choose by which books");
  const dialog = editor.dialog("By which books it is checked");
  const asked = editor.page.waitForEvent("filechooser");
  await dialog.getByRole("button", { name: "Open a profile file" }).click();
  const { rules } = crossed().settings;
  const text = serialiseProfile({ ...rules, limits: [{ name: "speed" as never, value: 1 }] });
  await (await asked).setFiles({
    name: "shop.profile.json",
    mimeType: "application/json",
    buffer: Buffer.from(text),
  });
  await expect(dialog.getByText(/rules\.limits\[0\]\.name/)).toBeVisible();
  await expect(dialog.getByLabel("The harness is for a")).toHaveValue("road-vehicle");
});
