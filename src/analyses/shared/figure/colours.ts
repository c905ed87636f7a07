/** The colours of every figure, as plain data; the workbench and the report use the same. Measured in docs/look.md. */

/** Grounds and inks; the workbench and the report use the same values. */
export const GROUND = {
  /** The page. */
  paper: '#F5EEE0',
  /** Sheets that lie on the page, and the ground of every figure. */
  sheet: '#FCF9F2',
  ink: '#2A2420',
  /** Secondary text; 4.5:1 and better on both grounds. */
  inkSoft: '#655A4F',
  /** Hairlines and grid. */
  line: '#DDD2BF',
  /** What is set aside, unknown or beyond the kinds with a look of their own. */
  neutral: '#A79C8D',
} as const;

/**
 * Colours of kinds, which come round after seven. Ordered dark to light so that a grey print keeps them apart
 * (at least 8 steps of CIE L* between neighbours); a shape doubles each.
 */
export const KIND_COLOURS = [
  '#1E2C5C', // woad
  '#DB8436', // copper
  '#1F6A53', // moss
  '#83BADC', // sky
  '#8C2418', // madder
  '#EBCE62', // weld
  '#8571AE', // heather
] as const;

/** The three parts of a dissimilarity keep these colours on every screen and page. */
export const BLOCK_COLOURS = { structure: '#1E2C5C', spacing: '#DB8436', fibre: '#1F6A53' } as const;

/** Little to much, for matrices and heat maps: lightness falls evenly, so it prints in grey. */
export const SEQUENTIAL: readonly (readonly [share: number, colour: string])[] = [
  [0, '#FCF9F2'],
  [0.2, '#EAD9B8'],
  [0.4, '#D3AE7C'],
  [0.6, '#AE7A51'],
  [0.8, '#734737'],
  [1, '#2F1D22'],
];

/** Below and above expectation, for residuals and differences; the middle is the sheet itself. */
export const DIVERGING: readonly (readonly [share: number, colour: string])[] = [
  [0, '#1E2C5C'],
  [0.25, '#7F8DB8'],
  [0.5, '#FCF9F2'],
  [0.75, '#D2846B'],
  [1, '#8C2418'],
];
