/**
 * Relative luminance of a colour.
 * @param hex "#rrggbb"
 * @returns 0 (black) to 1 (white)
 * @throws RangeError if the text is not of that form
 * @source W3C, Web Content Accessibility Guidelines 2.2, definition of relative luminance
 */
export function luminance(hex: string): number {
  const [red, green, blue] = channels(hex).map((value) =>
    value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4,
  ) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/**
 * Contrast ratio of two colours, 1 to 21, in either order.
 * @source W3C, Web Content Accessibility Guidelines 2.2, definition of contrast ratio
 */
export function contrast(one: string, other: string): number {
  const [darker, lighter] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

/** The grey that looks as light as a colour does: what a black-and-white printer makes of it. */
export function greyOf(hex: string): string {
  const linear = luminance(hex);
  const value = linear <= 0.0031308 ? linear * 12.92 : 1.055 * linear ** (1 / 2.4) - 0.055;
  const pair = Math.round(value * 255)
    .toString(16)
    .padStart(2, "0");
  return `#${pair}${pair}${pair}`;
}

/**
 * Red, green and blue as fractions.
 * @param hex "#rrggbb"
 * @returns each 0 to 1
 * @throws RangeError if the text is not of that form
 */
export function channels(hex: string): [number, number, number] {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new RangeError(`not a colour of the form #rrggbb: "${hex}"`);
  const part = (at: number): number => Number.parseInt(hex.slice(at, at + 2), 16) / 255;
  return [part(1), part(3), part(5)];
}
