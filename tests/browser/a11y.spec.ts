import { joinedPlugs, twoPlugs } from "./harnesses.ts";
import { type EditorPage, expect, expectAccessible, test } from "./page.ts";

type View = { readonly name: string; readonly show: (editor: EditorPage) => Promise<void> };

const key = (keys: string) => (editor: EditorPage) => editor.page.keyboard.press(keys);
const closed = async (editor: EditorPage) => {
  await editor.page.keyboard.press("Escape");
  await expect(editor.over).toHaveCount(0);
};
const dialog = (name: string, keys: string): View => ({
  name,
  show: async (editor) => {
    await editor.press(keys);
    await expect(editor.page.getByRole("dialog")).toBeVisible();
  },
});

const command = (name: string): View => ({
  name,
  show: async (editor) => {
    await editor.run(name);
    await expect(editor.page.getByRole("dialog")).toBeVisible();
  },
});

/** Each view is shown, looked at, and closed again with Escape. */
const DIALOGS: readonly View[] = [
  dialog("everything that can be done", "Control+k"),
  dialog("find", "Control+f"),
  dialog("keys and first steps", "F1"),
  dialog("print", "Control+p"),
  command("Recent harnesses"),
  command("Open a sample"),
  command("Add a connector"),
  {
    name: "a new connector, refused",
    show: async (editor) => {
      await editor.run("Add a connector");
      await editor.page.getByRole("radio", { name: /pasted/ }).check();
      await editor.page.getByLabel(/Rows from a spreadsheet/).fill("1\tground\tBK\n2\tsomething\tRD/WH");
      await editor.page.getByRole("button", { name: /^Add X\d+$/ }).click();
      await expect(editor.page.getByRole("dialog")).toContainText("Say which side it belongs to");
    },
  },
  {
    name: "rows pasted into a connector",
    show: async (editor) => {
      await editor.part("X1").click({ position: { x: 20, y: 12 } });
      await editor.run("Paste rows into X1");
      const paste = editor.dialog("Paste rows into X1");
      await paste
        .getByLabel(/Rows from a spreadsheet/)
        .fill("1\tground\tBK\t1.5\n2\tsomething\tRD/XX\tthick");
      await expect(paste.getByRole("table")).toBeVisible();
    },
  },
  {
    name: "a file that cannot be read",
    show: async (editor) => {
      await editor.chooseFile("bad.harness.json", '{"format": "pigtail-harness", "formatVersion": 1}');
      await expect(editor.dialog("bad.harness.json cannot be opened")).toBeVisible();
    },
  },
  {
    name: "the menu of files",
    show: async (editor) => {
      await editor.header.getByRole("button", { name: /: file$/ }).click();
      await expect(editor.page.getByRole("menu")).toBeVisible();
    },
  },
];

const WIDE: readonly View[] = [
  { name: "the drawing and its findings", show: async (editor) => expect(editor.findings).toBeVisible() },
  {
    name: "the wire table",
    show: async (editor) => {
      await key("Alt+w")(editor);
      await expect(editor.wires).toBeVisible();
    },
  },
  {
    name: "a cell of the wire table, being edited",
    show: async (editor) => {
      await editor.wires.getByRole("gridcell").first().click();
      await key("F2")(editor);
      await expect(editor.wires.getByRole("textbox").or(editor.wires.getByRole("combobox"))).toBeFocused();
    },
  },
  {
    name: "a cell with a list to choose from",
    show: async (editor) => {
      await key("Escape")(editor);
      await editor.wires
        .getByRole("gridcell", { name: /^(BK|RD|BU|YE|WH|GN)$/ })
        .first()
        .click();
      await key("F2")(editor);
      await expect(editor.wires.getByRole("textbox").or(editor.wires.getByRole("combobox"))).toBeFocused();
    },
  },
  {
    name: "details of a wire",
    show: async (editor) => {
      await key("Escape")(editor);
      await key("Alt+d")(editor);
      await expect(editor.page.getByRole("heading", { name: /^W\d+/ })).toBeVisible();
    },
  },
  {
    name: "details of a part",
    show: async (editor) => {
      await editor.part("X1").click({ position: { x: 20, y: 12 } });
      await key("i")(editor);
      await expect(editor.page.getByRole("heading", { name: /^X1/ })).toBeVisible();
    },
  },
  {
    name: "a text edited in place",
    show: async (editor) => {
      await editor.page.getByLabel("Drawing", { exact: true }).focus();
      await key("F2")(editor);
      await expect(editor.page.getByRole("textbox", { name: "Designation of X1" })).toBeFocused();
    },
  },
  {
    name: "the menu of the drawing",
    show: async (editor) => {
      await key("Escape")(editor);
      await key("Shift+F10")(editor);
      await expect(editor.page.getByRole("menu")).toBeVisible();
    },
  },
];

test("axe finds nothing wrong with the page", async ({ editor }) => {
  test.setTimeout(120_000);
  await editor.open();
  await expectAccessible(editor.page, "an empty sheet");
  await editor.openHarness(joinedPlugs());
  await expect(editor.part("X1")).toBeVisible();
  for (const { name, show } of WIDE) {
    await test.step(name, async () => {
      await show(editor);
      await expectAccessible(editor.page, name);
    });
  }
});

test("axe finds nothing wrong with any dialog", async ({ editor }) => {
  test.setTimeout(120_000);
  await editor.open();
  await editor.openHarness(joinedPlugs());
  await expect(editor.part("X1")).toBeVisible();
  for (const { name, show } of DIALOGS) {
    await test.step(name, async () => {
      await show(editor);
      await expectAccessible(editor.page, name);
      await closed(editor);
    });
  }
});

test("the theme is the system's until a person chooses one", async ({ editor }) => {
  const shown = editor.page.locator("html");
  await editor.open();
  await expect(shown).toHaveAttribute("data-theme", "paper");
  await editor.run("Dark: for the workshop");
  await expect(shown).toHaveAttribute("data-theme", "workshop");
  await editor.reload();
  await expect(shown).toHaveAttribute("data-theme", "workshop");
  await editor.run("Light: ink on paper");
  await editor.page.emulateMedia({ colorScheme: "dark" });
  await expect(shown).toHaveAttribute("data-theme", "paper");
});

test.describe("on a phone", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  test("axe finds nothing wrong with any view", async ({ editor }) => {
    test.setTimeout(120_000);
    await editor.open();
    await expectAccessible(editor.page, "an empty sheet");
    await editor.openHarness(twoPlugs());
    for (const name of ["Drawing", "Findings", "Wires", "Details"]) {
      const view = editor.page.getByRole("navigation").getByRole("button", { name });
      await view.tap();
      await expect(view).toHaveAttribute("aria-current", "page");
      await expectAccessible(editor.page, name);
    }
  });
});
