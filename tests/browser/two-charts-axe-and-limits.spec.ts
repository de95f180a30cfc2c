import { expect, expectAccessible, test } from "./page.ts";
import { AT_A_DESK, focused, Hand, make, pasteBoth, RECEIVER, row, screen, side, VAN } from "./two-charts.ts";

test.use(AT_A_DESK);

test("markup in a chart stays text, and a paste of ten megabytes is answered", async ({ editor }) => {
  const { page } = editor;
  const hand = new Hand(page);
  await editor.open();
  await hand.click("Join two charts");
  await expect(focused(editor)).toHaveRole("textbox");
  await hand.paste(`1\tground <img src=x onerror="document.title='hurt'">\tBK\n2\t=cmd|' /C calc'!A0\tRD\n`);
  await expect(side(editor, "The vehicle")).toContainText("<img src=x");
  await expect(page).not.toHaveTitle("hurt");
  await expect(side(editor, "The new unit").getByRole("textbox", { name: /^Paste or drop/ })).toBeFocused();
  await page.evaluate(() => {
    const text = Array.from(
      { length: 250_000 },
      (_, index) => `${index + 1}\tground wire number ${index}\tBK`,
    ).join("\n");
    const data = new DataTransfer();
    data.setData("text/plain", text);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
    );
  });
  await expect(side(editor, "The new unit")).toContainText(/Only the first [\d,. ]+ (rows|lines)/, {
    timeout: 30_000,
  });
  await expect(side(editor, "The new unit").getByRole("button", { name: /^Show more of/ })).toBeVisible();
});

const WIDTHS = [1400, 390] as const;

test("axe finds nothing wrong with either step, at a desk and on a phone", async ({ editor }) => {
  test.setTimeout(120_000);
  const { page } = editor;
  const hand = new Hand(page);
  await editor.open();
  await editor.press("Alt+j");
  await expect(screen(editor)).toBeVisible();
  /** Looks at both widths, and goes on at the narrow one, where the hand has least room. */
  const look = async (view: string) => {
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 844 });
      await expect.poll(() => page.evaluate(() => window.innerWidth)).toBe(width);
      await expectAccessible(page, `${view}, ${width} px wide`);
      const wider = await screen(editor).evaluate((dialog) => dialog.scrollWidth - dialog.clientWidth);
      expect(wider, `nothing is cut off at the side: ${view}, ${width} px wide`).toBeLessThanOrEqual(0);
    }
  };
  await look("both fields empty");
  await pasteBoth(editor, hand, `${VAN}\n17 ??? --\n`, RECEIVER);
  await look("both charts read");
  await screen(editor).getByRole("button", { name: "the mating face" }).click();
  await hand.click("Review the joins");
  await expect(make(editor)).toBeVisible();
  await look("proposed");
  await hand.click(/^Accept \d+ joins/);
  await expect(row(editor, /^vehicle 1 .*Accepted/)).toBeVisible();
  await look("accepted");
});
