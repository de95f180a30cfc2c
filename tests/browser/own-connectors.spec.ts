import { readFileSync } from "node:fs";
import type { Locator } from "@playwright/test";
import { parseConnector, serialiseConnector } from "../../src/graph/own-connector/parse-connector.ts";
import { joinedPlugs } from "./harnesses.ts";
import { type EditorPage, expect, expectAccessible, test } from "./page.ts";

const NAME = "Wren, radio plug";

/** Keeps X1 of the sample plugs, and leaves the dialog as it was answered. */
async function keepX1(editor: EditorPage, name = NAME): Promise<Locator> {
  await editor.part("X1").click();
  await editor.run("Keep X1 as a connector");
  const dialog = editor.dialog("Keep X1 as a connector");
  await dialog.getByLabel("Name").fill(name);
  await dialog.getByRole("button", { name: "Keep it" }).click();
  return dialog;
}

/** Opens the dialog for a new connector at its list of ready ones. */
async function readyOnes(editor: EditorPage): Promise<Locator> {
  await editor.run("Add a connector");
  const dialog = editor.dialog("A connector");
  await dialog.getByRole("radio", { name: /of a ready connector/ }).check();
  return dialog;
}

/** A closed list shows its groups to no reader; they are looked up by their label. */
const group = (dialog: Locator, name: string) =>
  dialog.getByLabel("Which").locator(`optgroup[label="${name}"]`);
const ownNames = (dialog: Locator) => group(dialog, "Your own").locator("option");

/** Chooses a file where the dialog asks for one. */
async function openInto(editor: EditorPage, dialog: Locator, name: string, text: string): Promise<void> {
  const asked = editor.page.waitForEvent("filechooser");
  await dialog.getByRole("button", { name: "Open a connector file" }).click();
  await (await asked).setFiles({ name, mimeType: "application/json", buffer: Buffer.from(text) });
}

async function savedFrom(editor: EditorPage, dialog: Locator): Promise<{ name: string; text: string }> {
  const download = editor.page.waitForEvent("download");
  await dialog.getByRole("button", { name: "Save as a file" }).click();
  const file = await download;
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), "utf8") };
}

test("a connector is kept from one harness and put down in another", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(await keepX1(editor)).toBeHidden();
  await expect(editor.page.getByText(`Kept X1 as “${NAME}”`).first()).toBeVisible();

  await editor.run("New harness");
  await expect(editor.heading("Untitled harness")).toBeAttached();
  await editor.reload();
  const dialog = await readyOnes(editor);
  await dialog.getByLabel("Which").selectOption({ label: NAME });
  await expect(dialog.getByRole("region", { name: "What stands in its cavities" })).toContainText(
    "constant feed",
  );
  // Its owner has said these when it was drawn first.
  await expect(dialog.getByRole("radio", { name: /^the vehicle/ })).toBeChecked();
  await expect(dialog.getByLabel("Name")).toHaveValue(NAME);
  await expectAccessible(editor.page, "a person's own connector is picked");
  await dialog.getByRole("button", { name: "Add X1" }).click();
  await expect(dialog).toBeHidden();
  await expect(editor.part("X1")).toBeVisible();
  await expect(editor.contact("X1.1")).toHaveAccessibleName(/constant feed.*no wire/);
});

test("one is saved as a file, removed, put back, and opened from its file again", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(await keepX1(editor)).toBeHidden();
  const dialog = await readyOnes(editor);
  await dialog.getByLabel("Which").selectOption({ label: NAME });
  const file = await savedFrom(editor, dialog);
  expect(file.name).toBe("Wren,-radio-plug.connector.json");
  const read = parseConnector(file.text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  expect(read.connector).toMatchObject({ name: NAME, side: "vehicle" });

  await dialog.getByRole("button", { name: "Remove" }).click();
  await expect(ownNames(dialog)).toHaveCount(0);
  await expect(dialog.getByRole("button", { name: "Open a connector file" })).toBeFocused();
  await dialog.getByRole("button", { name: "Put back what was removed" }).click();
  await expect(ownNames(dialog)).toHaveText([NAME]);
  await expect(dialog.getByLabel("Which").locator("option:checked")).toHaveText(NAME);

  await dialog.getByRole("button", { name: "Remove" }).click();
  await openInto(editor, dialog, file.name, file.text);
  await expect(ownNames(dialog)).toHaveText([NAME]);
  expect((await savedFrom(editor, dialog)).text).toBe(file.text);
});

test("of one name both are kept, or one replaces the other, as the person says", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(await keepX1(editor)).toBeHidden();
  const keep = await keepX1(editor, "wren,  RADIO plug");
  await expect(keep.getByRole("alert").filter({ hasText: "is kept already" })).toBeVisible();
  await expectAccessible(editor.page, "a name that is there already");
  await expect(keep.getByRole("button", { name: /^Keep both, this one as/ })).toBeFocused();
  await editor.page.keyboard.press("Enter");
  await expect(keep).toBeHidden();

  const dialog = await readyOnes(editor);
  await expect(ownNames(dialog)).toHaveCount(2);
  await dialog.getByLabel("Which").selectOption({ label: NAME });
  const { text } = await savedFrom(editor, dialog);
  const read = parseConnector(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const other = serialiseConnector({ ...read.connector, note: "behind the shelf" });
  await openInto(editor, dialog, "radio.connector.json", other);
  await dialog.getByRole("button", { name: "Keep only that one" }).click();
  expect((await savedFrom(editor, dialog)).text).toBe(text);
  await openInto(editor, dialog, "radio.connector.json", other);
  await dialog.getByRole("button", { name: "Replace the one that is there" }).click();
  await expect(dialog.getByRole("status").filter({ hasText: "is kept in this browser" })).toBeVisible();
  await expect(ownNames(dialog)).toHaveCount(2);
  expect((await savedFrom(editor, dialog)).text).toBe(other);

  await dialog.getByRole("button", { name: "Rename…" }).click();
  const field = dialog.getByLabel("New name");
  await expect(field).toBeFocused();
  await field.fill("wren, radio plug (2)");
  await field.press("Enter");
  await expect(dialog.getByText("Another one is called “wren, radio plug (2)”.")).toBeVisible();
  await field.fill("Trailer, radio plug");
  await field.press("Enter");
  await expect(dialog.getByLabel("Which").locator("option:checked")).toHaveText("Trailer, radio plug");
  await expect(dialog.getByRole("button", { name: "Rename…" })).toBeFocused();
  await expect(dialog).toBeVisible();
});

test("a file with mistakes says where they are, and nothing in a file becomes markup", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(await keepX1(editor)).toBeHidden();
  const dialog = await readyOnes(editor);
  await dialog.getByLabel("Which").selectOption({ label: NAME });
  const { text } = await savedFrom(editor, dialog);
  await openInto(editor, dialog, "bad.connector.json", text.replace('"vehicle"', '"lorry"'));
  const said = dialog.getByRole("alert").filter({ hasText: "bad.connector.json cannot be opened" });
  await expect(said).toContainText('side: found "lorry"; expected one of "vehicle", "equipment"');
  await expect(ownNames(dialog)).toHaveCount(1);

  const markup = '<img src="x" onerror="document.title=1">';
  const read = parseConnector(text);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const [first, ...rest] = read.connector.cavities;
  const hostile = { ...read.connector, name: markup, cavities: [{ ...first!, text: markup }, ...rest] };
  await openInto(editor, dialog, "hostile.connector.json", serialiseConnector(hostile));
  await expect(dialog.getByLabel("Which").locator("option:checked")).toHaveText(markup);
  await expect(dialog.getByRole("cell", { name: markup })).toBeVisible();
  await dialog.getByRole("button", { name: /^Add X\d+$/ }).click();
  await expect(dialog).toBeHidden();
  await expect(editor.page.getByRole("img", { name: "x" })).toHaveCount(0);
  expect(await editor.page.locator("img").count()).toBe(0);
});

test("a connector file that is opened like a harness is taken in", async ({ editor }) => {
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(await keepX1(editor)).toBeHidden();
  const first = await readyOnes(editor);
  await first.getByLabel("Which").selectOption({ label: NAME });
  const { text } = await savedFrom(editor, first);
  await first.getByRole("button", { name: "Remove" }).click();
  await first.getByRole("button", { name: "Leave it" }).click();
  await expect(first).toBeHidden();
  await editor.chooseFile("radio.connector.json", text);
  const dialog = editor.dialog("A connector");
  await expect(dialog.getByLabel("Which").locator("option:checked")).toHaveText(NAME);
});

test("the ready connectors of the catalogue show their caution and source, and warn of another voltage", async ({
  editor,
}) => {
  await editor.open();
  const dialog = await readyOnes(editor);
  for (const name of ["Radio", "Trailer", "Diagnostics", "Relay", "Sound and data"])
    await expect(group(dialog, name)).toHaveCount(1);
  await expect(group(dialog, "Your own")).toHaveCount(0);
  await dialog.getByLabel("Which").selectOption({ label: "ISO 1185 trailer socket, 24 V, 7-pin type N" });
  await expect(dialog.getByText(/SAE J560 has the same shape/)).toBeVisible();
  await expect(dialog.getByText("It is made for 24 V; this harness is a 12 V system.")).toBeVisible();
  await dialog.getByLabel("Which").selectOption({ label: "ISO 11446 trailer socket, 12 V, 13-pin" });
  await expect(dialog.getByText(/made for 24 V/)).toBeHidden();
  await expect(dialog.getByText(/Edition: 2012/)).toBeVisible();
  await expectAccessible(editor.page, "a ready connector is picked");
});
