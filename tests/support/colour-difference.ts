/** How far apart two colours look, and how those see them who lack a kind of cone, by published formulas. */

/** CIE L*a*b* with the white of D65. */
export type Lab = readonly [lightness: number, a: number, b: number];
/** Red, green and blue of sRGB without its gamma, 0 to 1. */
type Linear = readonly [red: number, green: number, blue: number];
type Matrix = readonly [Linear, Linear, Linear];

/** Ways of seeing: all three kinds of cones, without one of them, and lightness alone. */
export const VISIONS = ["normal", "protanopia", "deuteranopia", "tritanopia", "greyscale"] as const;
export type Vision = (typeof VISIONS)[number];

/** G. M. Machado, M. M. Oliveira and L. A. F. Fernandes (2009), IEEE Transactions on Visualization and Computer Graphics 15: 1291–1298, severity 1. */
const MACHADO: Readonly<Partial<Record<Vision, Matrix>>> = {
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};
/** Luminance of each channel (IEC 61966-2-1). */
const LUMINANCE: Linear = [0.2126, 0.7152, 0.0722];
/** sRGB to XYZ, and the white of D65 (IEC 61966-2-1). */
const TO_XYZ: Matrix = [
  [0.4124, 0.3576, 0.1805],
  [0.2126, 0.7152, 0.0722],
  [0.0193, 0.1192, 0.9505],
];
const WHITE: Linear = [0.9505, 1, 1.089];

/**
 * A colour as it is seen.
 *
 * @param colour six hexadecimal digits after a hash
 * @example seen("#ffffff", "normal")[0].toFixed(1) // "100.0"
 */
export function seen(colour: string, vision: Vision): Lab {
  const linear = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as unknown as Linear;
  const grey = dot(LUMINANCE, linear);
  const matrix = MACHADO[vision];
  const light =
    vision === "greyscale" ? ([grey, grey, grey] as const) : matrix === undefined ? linear : times(matrix, linear);
  return labOf(light.map((share) => Math.min(1, Math.max(0, share))) as unknown as Linear);
}

function labOf(linear: Linear): Lab {
  const [x, y, z] = times(TO_XYZ, linear).map((value, at) => {
    const share = value / (WHITE[at] ?? 1);
    return share > 216 / 24_389 ? Math.cbrt(share) : (24_389 / 27 / 116) * share + 16 / 116;
  }) as unknown as Linear;
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}

function times(matrix: Matrix, vector: Linear): Linear {
  return matrix.map((row) => dot(row, vector)) as unknown as Linear;
}

function dot(one: Linear, other: Linear): number {
  return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
}

const degrees = (radians: number) => (radians * 180) / Math.PI;
const radians = (angle: number) => (angle * Math.PI) / 180;
/** Half of a chroma's seventh power over itself and 25's, under the root. */
const seventh = (chroma: number) => Math.sqrt(chroma ** 7 / (chroma ** 7 + 25 ** 7));

/**
 * CIEDE2000 with all weights 1, in the form of G. Sharma, W. Wu and E. N. Dalal (2005), Color Research and Application
 * 30: 21–30, equations 2 to 22.
 *
 * @returns 0 for one colour, about 1 for two that can just be told apart side by side
 * @example ciede2000([50, 2.6772, -79.7751], [50, 0, -82.7485]).toFixed(4) // "2.0425"
 */
export function ciede2000([l1, a1, b1]: Lab, [l2, a2, b2]: Lab): number {
  const stretch = 1 + 0.5 * (1 - seventh((Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2));
  const [c1, c2] = [Math.hypot(stretch * a1, b1), Math.hypot(stretch * a2, b2)];
  const hue = (a: number, b: number) => (a === 0 && b === 0 ? 0 : (degrees(Math.atan2(b, stretch * a)) + 360) % 360);
  const [h1, h2] = [hue(a1, b1), hue(a2, b2)];
  const isGrey = c1 * c2 === 0;
  const turn = isGrey ? 0 : ((h2 - h1 + 540) % 360) - 180;
  const [dL, dC, dH] = [l2 - l1, c2 - c1, 2 * Math.sqrt(c1 * c2) * Math.sin(radians(turn / 2))];
  const [l, c] = [(l1 + l2) / 2, (c1 + c2) / 2];
  const apart = Math.abs(h1 - h2) > 180;
  const h = isGrey ? h1 + h2 : apart ? (h1 + h2 + (h1 + h2 < 360 ? 360 : -360)) / 2 : (h1 + h2) / 2;
  const cosine = (times: number, off: number) => Math.cos(radians(times * h + off));
  const t = 1 - 0.17 * cosine(1, -30) + 0.24 * cosine(2, 0) + 0.32 * cosine(3, 6) - 0.2 * cosine(4, -63);
  const sL = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const [sC, sH] = [1 + 0.045 * c, 1 + 0.015 * c * t];
  const rotation = -Math.sin(radians(60 * Math.exp(-(((h - 275) / 25) ** 2)))) * 2 * seventh(c);
  const [x, y, z] = [dL / sL, dC / sC, dH / sH];
  return Math.sqrt(x ** 2 + y ** 2 + z ** 2 + rotation * y * z);
}
