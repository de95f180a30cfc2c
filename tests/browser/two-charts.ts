import type { Page } from "@playwright/test";
import { type EditorPage, expect } from "./page.ts";

/** A desk's window, with the clipboard allowed: charts are pasted. */
export const AT_A_DESK = {
  viewport: { width: 1400, height: 900 },
  permissions: ["clipboard-read", "clipboard-write"],
};

/** The radio plug of the mobile library's van, as its fitter noted it. */
export const VAN = `Radio plug of the step van Wren
Pin\tFunction\tColour\tmm2
1\tBattery, always on\tRD\t1.5
2\tIgnition switched, accessory\tYE\t0.75
3\tGround\tBK\t1.5
4\tInstrument lighting\tOG\t0.5
5\tAerial motor\tBU\t0.5
6\tVehicle speed\tPK\t0.5
7\tReversing lamp\tGN/WH\t0.5
8\tSpeaker front left +\tWH\t0.75
9\tSpeaker front left -\tWH/BK\t0.75
10\tSpeaker front right +\tGY\t0.75
11\tSpeaker front right -\tGY/BK\t0.75
12\tSpeaker rear left +\tGN\t0.75
13\tSpeaker rear left -\tGN/BK\t0.75
14\tSpeaker rear right +\tVT\t0.75
15\tSpeaker rear right -\tVT/BK\t0.75
16\tRemote\tBN\t0.5
`;

/** What came with the receiver: flying leads, named by their colours alone. */
export const RECEIVER = `Receiver lead set
yellow - memory, constant 12 V
red - ignition
black - ground
orange/white - illumination
blue - power antenna
blue/white - amplifier turn-on
violet/white - reverse
white - front left +
white/black - front left -
gray - front right +
gray/black - front right -
green - rear left +
green/black - rear left -
violet - rear right +
violet/black - rear right -
brown - phone mute
`;

/** Counts what a person does: every click, every press of a key, every paste. */
export class Hand {
  count = 0;

  constructor(private readonly page: Page) {}

  async click(name: string | RegExp): Promise<void> {
    this.count++;
    await this.page.getByRole("button", { name }).click();
  }

  async press(keys: string): Promise<void> {
    this.count++;
    await this.page.keyboard.press(keys);
  }

  async paste(text: string): Promise<void> {
    this.count++;
    await this.page.evaluate((words) => navigator.clipboard.writeText(words), text);
    await this.page.keyboard.press("Control+v");
  }
}

/** Where things stand on the screen of two charts. */
export const screen = (editor: EditorPage) => editor.dialog("Join two charts");
export const side = (editor: EditorPage, name: string) =>
  screen(editor).getByRole("region", { name, exact: true });
export const rows = (editor: EditorPage, name: string) =>
  side(editor, name).getByRole("table").getByRole("row");
export const section = (editor: EditorPage, name: RegExp) => screen(editor).getByRole("region", { name });
export const row = (editor: EditorPage, name: RegExp) => screen(editor).getByRole("group", { name });
export const make = (editor: EditorPage) => screen(editor).getByRole("button", { name: /^(Make|Put down)/ });
export const focused = (editor: EditorPage) => editor.page.locator(":focus");

/** Opens the screen and pastes both charts; the focus goes from one empty field to the next by itself. */
export async function pasteBoth(editor: EditorPage, hand: Hand, left = VAN, right = RECEIVER): Promise<void> {
  await expect(side(editor, "The vehicle").getByRole("textbox", { name: /^Paste or drop/ })).toBeFocused();
  await hand.paste(left);
  await expect(side(editor, "The new unit").getByRole("textbox", { name: /^Paste or drop/ })).toBeFocused();
  await hand.paste(right);
  await expect(side(editor, "The vehicle")).toContainText("16 rows read");
  await expect(side(editor, "The new unit")).toContainText("16 rows read");
}

/** Answers the question that has the focus with its first candidate, until none is left. */
export async function answerAll(editor: EditorPage, hand: Hand): Promise<void> {
  const questions = section(editor, /^Questions/);
  for (let left = await questions.getByRole("listitem").count(); left > 0; left--) {
    await expect(focused(editor)).toHaveAccessibleName(/Which one\?/);
    await hand.press("1");
    await expect(questions.getByRole("listitem")).toHaveCount(left - 1);
  }
}
