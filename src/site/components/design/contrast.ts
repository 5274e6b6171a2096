/** Relative luminance and contrast by the formulas of WCAG 2.2 (https://www.w3.org/TR/WCAG22/#dfn-relative-luminance). */

/**
 * The contrast of two colours.
 *
 * @param one hexadecimal, such as "#8c2467"; a fourth pair (opacity) is not counted
 * @param other the same
 * @returns 1 to 21
 * @example contrast("#000000", "#ffffff") // 21
 */
export function contrast(one: string, other: string): number {
  const [lighter = 0, darker = 0] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (lighter + 0.05) / (darker + 0.05);
}

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = channels(colour).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** Three numbers from 0 to 255; short forms are written out. */
function channels(colour: string): number[] {
  const digits = colour.replace("#", "");
  const long = digits.length < 6 ? [...digits].map((digit) => digit + digit).join("") : digits;
  return [0, 2, 4].map((at) => Number.parseInt(long.slice(at, at + 2), 16));
}
