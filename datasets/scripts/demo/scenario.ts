/**
 * The invented scenario of the demo: the Othmarel coast, which does not exist. Six places, three
 * phases, three ways of making fabrics. Everything here is the planted truth; the five catalogues are
 * written from it and then made untidy.
 */

export const PHASES = ['Early', 'Middle', 'Late'] as const;
export type Phase = (typeof PHASES)[number];

/** Begin and end as printed in the assemblage table; the coast's chronology crosses the turn of the era. */
export const PHASE_YEARS: Readonly<Record<Phase, readonly [from: string, to: string]>> = {
  Early: ['400 BC', '150 BC'],
  Middle: ['150 BC', 'AD 120'],
  Late: ['AD 120', 'AD 400'],
};

export type Kind =
  | 'open twining'
  | 'close twining'
  | 'balanced tabby'
  | 'weft-faced repp'
  | 'knotted netting'
  | 'coiled basketry'
  | 'odd piece';

export type Fibre =
  | 'willow bast'
  | 'tree bast'
  | 'rush'
  | 'nettle'
  | 'flax'
  | 'wool'
  | 'hemp'
  | 'palm leaf'
  | 'silk';

export type Twist = 'S' | 'Z' | 'none';

export interface KindTruth {
  /** Typical value and relative spread between items of one kind; a kind lacks what does not apply to it. */
  readonly measures: Readonly<Partial<Record<Measure, readonly [typical: number, spread: number]>>>;
  /** Fibres with their shares. */
  readonly fibres: readonly (readonly [Fibre, number])[];
  readonly twist1: Twist | null;
  readonly twist2: Twist | null;
  readonly slant: 'S' | 'Z' | null;
  readonly ply1: string | null;
  readonly ply2: string | null;
  /** Fibres that now and then take the usual one's place. */
  readonly otherFibres: readonly Fibre[];
  /** Uses that a recorder might write down, most often first. */
  readonly uses: readonly string[];
}

export const MEASURES = [
  'density1',
  'density2',
  'rowSpacing',
  'diameter1',
  'diameter2',
  'meshGauge',
  'coilPitch',
  'stitchDensity',
] as const;
export type Measure = (typeof MEASURES)[number];

/** Row spacing in mm at which open and close twining part company; no twined item lies within 1.5 mm of it. */
export const PLANTED_THRESHOLD = 8;

export const KINDS: Readonly<Record<Kind, KindTruth>> = {
  'open twining': {
    measures: {
      density1: [2.4, 0.16],
      rowSpacing: [27, 0.24],
      diameter1: [1.8, 0.14],
      diameter2: [1.5, 0.14],
    },
    fibres: [
      ['willow bast', 0.75],
      ['tree bast', 0.25],
    ],
    twist1: 'none',
    twist2: 'Z',
    slant: 'Z',
    ply1: null,
    ply2: 'Z2s',
    otherFibres: ['nettle', 'rush'],
    uses: ['cape', 'screen'],
  },
  'close twining': {
    measures: {
      density1: [4.6, 0.15],
      rowSpacing: [3.5, 0.18],
      diameter1: [1.2, 0.14],
      diameter2: [1.1, 0.14],
    },
    fibres: [
      ['rush', 0.7],
      ['nettle', 0.3],
    ],
    twist1: 'S',
    twist2: 'S',
    slant: 'S',
    ply1: null,
    ply2: 'S2z',
    otherFibres: ['willow bast', 'hemp'],
    uses: ['bag', 'sack'],
  },
  'balanced tabby': {
    measures: { density1: [11, 0.14], density2: [10, 0.14], diameter1: [0.5, 0.13], diameter2: [0.5, 0.13] },
    fibres: [
      ['flax', 0.8],
      ['nettle', 0.2],
    ],
    twist1: 'Z',
    twist2: 'Z',
    slant: null,
    ply1: null,
    ply2: null,
    otherFibres: ['hemp'],
    uses: ['garment', 'wrapper'],
  },
  'weft-faced repp': {
    measures: { density1: [6, 0.13], density2: [21, 0.13], diameter1: [0.8, 0.12], diameter2: [0.4, 0.12] },
    fibres: [['wool', 1]],
    twist1: 'S',
    twist2: 'S',
    slant: null,
    ply1: 'S2z',
    ply2: null,
    otherFibres: ['flax'],
    uses: ['blanket', 'saddle cloth'],
  },
  'knotted netting': {
    measures: { meshGauge: [18, 0.22], diameter1: [1.2, 0.15] },
    fibres: [['hemp', 1]],
    twist1: 'S',
    twist2: null,
    slant: null,
    ply1: 'S2z',
    ply2: null,
    otherFibres: ['flax', 'nettle'],
    uses: ['fishing net', 'carrying net'],
  },
  'coiled basketry': {
    measures: { coilPitch: [6.5, 0.16], stitchDensity: [3, 0.16], diameter1: [4, 0.15] },
    fibres: [
      ['rush', 0.5],
      ['palm leaf', 0.5],
    ],
    twist1: 'none',
    twist2: null,
    slant: null,
    ply1: null,
    ply2: null,
    otherFibres: ['willow bast'],
    uses: ['basket', 'lid'],
  },
  'odd piece': {
    measures: { density1: [32, 0.05], density2: [8, 0.05], diameter1: [0.3, 0.05], diameter2: [0.3, 0.05] },
    fibres: [['silk', 1]],
    twist1: 'Z',
    twist2: 'none',
    slant: null,
    ply1: 'Z2s',
    ply2: null,
    otherFibres: [],
    uses: ['band'],
  },
};

export type Tradition = 'Shelf' | 'Strand' | 'Range';

/** What each tradition makes, in shares; the traditions differ in their mixture, not in how a kind is made. */
export const TRADITIONS: Readonly<Record<Tradition, readonly (readonly [Kind, number])[]>> = {
  Shelf: [
    ['open twining', 0.45],
    ['balanced tabby', 0.25],
    ['coiled basketry', 0.2],
    ['close twining', 0.1],
  ],
  Strand: [
    ['close twining', 0.35],
    ['knotted netting', 0.3],
    ['weft-faced repp', 0.2],
    ['balanced tabby', 0.15],
  ],
  Range: [
    ['weft-faced repp', 0.5],
    ['balanced tabby', 0.25],
    ['close twining', 0.15],
    ['open twining', 0.1],
  ],
};

export type Mode = 'desiccated' | 'charred' | 'mineralised' | 'waterlogged' | 'salt';

export interface SiteTruth {
  readonly name: string;
  readonly prefix: string;
  readonly region: string;
  readonly recovery: string;
  /** Shares of the preservation modes. */
  readonly modes: readonly (readonly [Mode, number])[];
  /** Items made (before decay) in each phase, with the tradition they follow. */
  readonly made: readonly { readonly phase: Phase; readonly tradition: Tradition; readonly items: number }[];
  /** Easting and northing in km on an invented grid, already coarsened to 10 km. */
  readonly grid: readonly [number, number];
}

export const SITES: readonly SiteTruth[] = [
  {
    name: 'Quorrimel Cave',
    prefix: 'QU',
    region: 'High Shelf',
    recovery: 'excavated, sieved at 2 mm',
    modes: [['desiccated', 1]],
    made: [
      { phase: 'Early', tradition: 'Shelf', items: 26 },
      { phase: 'Middle', tradition: 'Shelf', items: 26 },
    ],
    grid: [140, 60],
  },
  {
    name: 'Ulvombre Terraces',
    prefix: 'UT',
    region: 'High Shelf',
    recovery: 'excavated, hand-picked',
    modes: [
      ['desiccated', 0.7],
      ['charred', 0.3],
    ],
    made: [
      { phase: 'Middle', tradition: 'Shelf', items: 26 },
      { phase: 'Late', tradition: 'Shelf', items: 26 },
    ],
    grid: [160, 80],
  },
  {
    name: 'Drommavel Landing',
    prefix: 'DL',
    region: 'Strand',
    recovery: 'excavated, floated',
    modes: [['charred', 1]],
    made: [
      { phase: 'Early', tradition: 'Strand', items: 28 },
      { phase: 'Middle', tradition: 'Strand', items: 28 },
    ],
    grid: [30, 20],
  },
  {
    name: 'Pellunar Wreck',
    prefix: 'PW',
    region: 'Strand',
    recovery: 'dived, grid squares of 1 m',
    modes: [['waterlogged', 1]],
    made: [
      { phase: 'Late', tradition: 'Shelf', items: 20 },
      { phase: 'Late', tradition: 'Strand', items: 20 },
    ],
    grid: [10, 0],
  },
  {
    name: 'Tazzimbe Gallery',
    prefix: 'TZ',
    region: 'Inner Range',
    recovery: 'collected from the backfill',
    modes: [['mineralised', 1]],
    made: [{ phase: 'Middle', tradition: 'Range', items: 40 }],
    grid: [210, 130],
  },
  {
    name: 'Ysketh Pans',
    prefix: 'YS',
    region: 'Strand',
    recovery: 'excavated, sieved at 4 mm',
    modes: [['salt', 1]],
    made: [{ phase: 'Late', tradition: 'Strand', items: 32 }],
    grid: [50, 30],
  },
];

/**
 * What does not survive. Burnt animal fibre leaves nothing at the landing; in the mine gallery only
 * what lay against ore is preserved, so that nothing open or coarse is.
 */
export const LOST: readonly {
  readonly mode: Mode;
  readonly kinds: readonly Kind[];
  readonly share: number;
}[] = [
  { mode: 'charred', kinds: ['weft-faced repp'], share: 1 },
  { mode: 'mineralised', kinds: ['open twining', 'coiled basketry'], share: 1 },
];

/** Share of items that differ from their kind: in the direction of a twist or lean, and in fibre. */
export const UNLIKE_ITS_KIND = { direction: 0.1, fibre: 0.12 };

/** Charring shrinks: counts per cm go up and diameters down by this factor. */
export const CHARRING = 1.12;

/** Shares of fragments on which a feature can no longer be seen. */
export const UNSEEN: Readonly<
  Record<Mode, { readonly twist: number; readonly fibre: number; readonly measure: number }>
> = {
  desiccated: { twist: 0.05, fibre: 0.05, measure: 0.04 },
  charred: { twist: 0.25, fibre: 0.3, measure: 0.08 },
  mineralised: { twist: 0.2, fibre: 0.45, measure: 0.08 },
  waterlogged: { twist: 0.1, fibre: 0.1, measure: 0.05 },
  salt: { twist: 0.08, fibre: 0.08, measure: 0.05 },
};
