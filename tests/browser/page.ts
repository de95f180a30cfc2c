import AxeBuilder from "@axe-core/playwright";
import { test as base, expect, type Locator, type Page } from "@playwright/test";
import type { Harness } from "../../src/graph/harness.ts";
import { serialise } from "../../src/graph/parse/parse.ts";

/** Collects what a person would not see: script errors, and requests that fail or leave the machine. */
export function watchForTrouble(page: Page, own: string): string[] {
  const troubles: string[] = [];
  page.on("pageerror", (error) => troubles.push(error.stack ?? error.message));
  page.on("console", (message) => {
    if (message.type() === "error") troubles.push(message.text());
  });
  page.on("request", (request) => {
    const url = request.url();
    if (!url.startsWith(own) && !/^(blob|data):/.test(url)) troubles.push(`asked another host: ${url}`);
  });
  return troubles;
}

/** Some browsers can write a file again where it was; without these two they ask and download, as phones do. */
function withoutFilePickers(): void {
  for (const name of ["showOpenFilePicker", "showSaveFilePicker"]) Reflect.deleteProperty(window, name);
}

const exactly = (text: string): RegExp => new RegExp(`^${escaped(text)}(?=,|$)`);

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

/** The editor as a person uses it: everything is found by its role and its name. */
export class EditorPage {
  readonly header: Locator;
  readonly drawing: Locator;
  readonly findings: Locator;
  readonly wires: Locator;
  readonly status: Locator;
  /** What stands over the page and keeps keys from it. */
  readonly over: Locator;

  private file: { readonly name: string; readonly mimeType: string; readonly buffer: Buffer } | null = null;

  constructor(
    readonly page: Page,
    /** Script errors and foreign requests so far. */
    readonly troubles: string[],
  ) {
    // Listening from the start: a chooser that opens before somebody listens is the browser's own, and stays.
    page.on("filechooser", (chooser) => {
      const { file } = this;
      this.file = null;
      if (file) void chooser.setFiles(file);
    });
    this.header = page.getByRole("banner");
    this.drawing = page.getByRole("main");
    this.findings = page.getByRole("complementary", { name: "Findings" });
    this.wires = page.getByRole("grid", { name: "Wires" });
    this.status = page.getByRole("contentinfo");
    this.over = page.locator("dialog[open], [role=dialog], [role=alertdialog], [role=menu]");
  }

  /** Opens an address of the editor; without one, an empty sheet. */
  async open(address = "./?new"): Promise<void> {
    await this.page.goto(address);
    await expect(this.drawing).toBeVisible();
  }

  /** Loads the page again. What was open last is then fetched: wait for something of it before going on. */
  async reload(): Promise<void> {
    await this.page.reload();
    await expect(this.drawing).toBeVisible();
  }

  /** Opens a harness as a file that a person chose. The page's name is then the file's. */
  async openHarness(harness: Harness, fileName = "wren.harness.json"): Promise<void> {
    await this.chooseFile(fileName, serialise(harness));
    await expect(this.heading(fileName.replace(".harness.json", ""))).toBeAttached();
  }

  async chooseFile(name: string, text: string): Promise<void> {
    this.file = { name, mimeType: "application/json", buffer: Buffer.from(text) };
    await this.press("Control+o");
  }

  heading(name: string): Locator {
    return this.page.getByRole("heading", { level: 1, name });
  }

  part(designation: string): Locator {
    return this.page.getByRole("group", { name: exactly(designation) });
  }

  /** A contact by its name: "X1.A4". */
  contact(name: string): Locator {
    return this.drawing.getByRole("button", { name: exactly(name) });
  }

  /** The findings whose words hold this text. */
  finding(text: string | RegExp): Locator {
    return this.findings.getByRole("listitem").filter({ hasText: text });
  }

  row(designation: string): Locator {
    return this.wires
      .getByRole("row")
      .filter({ has: this.page.getByRole("gridcell", { name: designation, exact: true }) });
  }

  dialog(name: string | RegExp): Locator {
    return this.page.getByRole("dialog", { name });
  }

  /** Presses keys that are meant for the page, not for a dialog or a menu that has yet to close. */
  async press(keys: string): Promise<void> {
    await expect(this.over).toHaveCount(0);
    await this.page.keyboard.press(keys);
  }

  /** Runs a command from the list of everything that can be done, by the beginning of its name. */
  async run(name: string): Promise<void> {
    const field = this.page.getByRole("combobox", { name: "What to do" });
    await this.press("Control+k");
    await expect(field).toBeFocused();
    await field.fill(name);
    await expect(this.page.getByRole("option").first()).toContainText(name, { ignoreCase: true });
    await field.press("Enter");
    await expect(field).toBeHidden();
  }

  /** Finds a part, a wire or a contact by what is typed, and goes there. */
  async find(typed: string, first = typed): Promise<void> {
    const field = this.page.getByRole("combobox", { name: "What to find" });
    await this.press("Control+f");
    await expect(field).toBeFocused();
    await field.fill(typed);
    await expect(this.page.getByRole("option").first()).toContainText(first);
    await field.press("Enter");
    await expect(field).toBeHidden();
  }

  /** Draws a lead with the mouse, the way a hand does: in steps. */
  async drag(from: Locator, to: Locator): Promise<void> {
    await this.dragTo(from, await middleOf(to));
  }

  async dragTo(from: Locator, to: Spot): Promise<void> {
    const start = await middleOf(from);
    const { mouse } = this.page;
    await mouse.move(start.x, start.y);
    await mouse.down();
    for (let step = 1; step <= 6; step++) {
      await mouse.move(start.x + ((to.x - start.x) * step) / 6, start.y + ((to.y - start.y) * step) / 6);
    }
    await mouse.up();
  }

  async join(from: string, to: string): Promise<void> {
    await this.drag(this.contact(from), this.contact(to));
    await expect(this.contact(from)).toHaveAccessibleName(/joined by W\d+/);
    await this.page.keyboard.press("Escape");
  }

  /** Waits until the last edit is safe in the browser. */
  async kept(): Promise<void> {
    await expect(this.header).toContainText(/kept in this browser|saved/);
  }

  /** The name that the undo button shows. */
  undo(name: string): Locator {
    return this.header.getByRole("button", { name: `Undo: ${name}` });
  }
}

export type Spot = { readonly x: number; readonly y: number };
export type Box = Spot & { readonly width: number; readonly height: number };

/** Where a thing stands once it has come to rest: the same in three frames on end. */
export async function boxOf(thing: Locator): Promise<Box> {
  await expect(thing).toBeVisible();
  return thing.evaluate(async (element) => {
    const frame = () => new Promise((next) => requestAnimationFrame(next));
    const read = () => {
      const { x, y, width, height } = element.getBoundingClientRect();
      return { x, y, width, height };
    };
    let box = read();
    for (let same = 0; same < 2; ) {
      await frame();
      const now = read();
      const still =
        now.x === box.x && now.y === box.y && now.width === box.width && now.height === box.height;
      same = still ? same + 1 : 0;
      box = now;
    }
    return box;
  });
}

export async function middleOf(thing: Locator): Promise<Spot> {
  const { x, y, width, height } = await boxOf(thing);
  return { x: x + width / 2, y: y + height / 2 };
}

const THEMES = [
  ["light", "paper"],
  ["dark", "workshop"],
] as const;

/**
 * Nothing that axe can find is wrong with the page as it stands, neither on paper nor in the workshop: the theme follows
 * the system's, so that it is changed in place.
 */
export async function expectAccessible(page: Page, view: string): Promise<void> {
  for (const [colorScheme, theme] of THEMES) {
    await page.emulateMedia({ colorScheme });
    await expect(page.locator("html")).toHaveAttribute("data-theme", theme);
    expect(await violationsOn(page), `${view}, ${theme}`).toEqual([]);
  }
  await page.emulateMedia({ colorScheme: "light" });
}

/** All of WCAG 2.2 AA and what axe advises besides. */
async function violationsOn(page: Page) {
  // Axe is a large script: it is read once a page. Of what is right nothing need be gathered, nor from frames.
  const isThere = await page.evaluate(() => "axe" in window);
  const axe = new AxeBuilder({ page, ...(isThere ? { axeSource: ";" } : {}) })
    .setLegacyMode()
    .options({ resultTypes: ["violations"] })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]);
  // What stands behind an open dialog is out of reach, and has been looked at without it.
  if (await page.getByRole("dialog").or(page.getByRole("alertdialog")).first().isVisible()) {
    axe.include("dialog, [role=dialog], [role=alertdialog]");
  }
  const { violations } = await axe.analyze();
  return violations.map(({ id, help, nodes }) => ({
    id,
    help,
    at: nodes.slice(0, 4).map(({ html, failureSummary }) => `${html.slice(0, 200)} | ${failureSummary}`),
  }));
}

/** A test of the editor fails as well when the page had a script error or asked another host for anything. */
export const test = base.extend<{ editor: EditorPage }>({
  editor: async ({ page, baseURL }, use) => {
    const troubles = watchForTrouble(page, baseURL ?? "");
    await page.addInitScript(withoutFilePickers);
    const editor = new EditorPage(page, troubles);
    await use(editor);
    expect(troubles, "script errors and requests to other hosts").toEqual([]);
  },
});

export { expect };
