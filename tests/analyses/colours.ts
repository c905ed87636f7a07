/** Colours as they are seen: sRGB to linear light, to XYZ, to L*a*b*. */

export type Triple = [number, number, number];

/** IEC 61966-2-1 (sRGB) to linear light. */
export function linear(hex: string): Triple {
  return [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as Triple;
}

export const times = (matrix: readonly Triple[], [r, g, b]: Triple): Triple =>
  matrix.map(([x, y, z]) => x * r + y * g + z * b) as Triple;

/** Primaries of IEC 61966-2-1 to CIE XYZ, D65. */
export const XYZ: Triple[] = [
  [0.4124564, 0.3575761, 0.180_4375],
  [0.2126729, 0.7151522, 0.072175],
  [0.0193339, 0.119192, 0.9503041],
];

/** CIE 1976 L*a*b*, CIE 15:2004. */
export function lab(colour: Triple): Triple {
  const [x, y, z] = times(XYZ, colour).map((value, i) => {
    const t = value / [0.95047, 1, 1.08883][i]!;
    return t > 216 / 24389 ? Math.cbrt(t) : (24389 / 27 / 116) * t + 16 / 116;
  }) as Triple;
  return [116 * y - 16, 500 * (x - y), 200 * (y - z)];
}
