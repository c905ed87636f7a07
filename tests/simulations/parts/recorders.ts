import { normalQuantileUpper } from '../../../src/numerics/foundation/distributions.ts';
import { exp } from '../../../src/numerics/foundation/elementary.ts';
import type { Random } from '../../../src/numerics/foundation/random.ts';
import type { StudyInput } from '../../../src/study/schema.ts';

/**
 * One invented region, and the same finds as different hands would write them down. What differs between two
 * recordings is the recording alone: coarser words, other units, rounding, item numbers, spellings, gaps, marks of doubt.
 */

export interface Find {
  readonly item: string;
  readonly site: string;
  readonly phase: 'Early' | 'Late';
  readonly structure: string;
  readonly fibre: string;
  /** mm, of twined pieces. */
  readonly spacing: number;
  /** per cm. */
  readonly density: number;
  readonly preservation: string;
}

/** Shares of structures: two traditions, and one place between them. */
const BRAIDED = {
  tabby: 0.1,
  'open twining': 0.42,
  'close twining': 0.18,
  'knotted netting': 0.2,
  coiled: 0.1,
};
const WOVEN = {
  tabby: 0.5,
  '2/2 twill': 0.25,
  'close twining': 0.13,
  'open twining': 0.04,
  'knotted netting': 0.08,
};
const SITES: Readonly<Record<string, readonly [braided: number, preservation: string]>> = {
  'Ostrel Hollow': [1, 'waterlogged'],
  'Vanmere Gate': [0.93, 'waterlogged'],
  'Tull Barrow': [0.5, 'charred'],
  'Keshem Quay': [0.04, 'charred'],
  'Yarrin Field': [0, 'dry'],
};
export const FIRST_SITE = 'Ostrel Hollow';
const FIBRES = { 'lime bast': 0.3, 'willow bast': 0.2, flax: 0.3, 'sheep wool': 0.2 };

const normal = (random: Random) => normalQuantileUpper(1 - Math.max(random.next(), 1e-12));

function pick(shares: Readonly<Record<string, number>>, random: Random): string {
  let left = random.next();
  for (const [name, share] of Object.entries(shares)) {
    left -= share;
    if (left < 0) return name;
  }
  return Object.keys(shares)[0];
}

/**
 * Thirty items a site, of one to four fragments. Structure goes with the site and row spacing with the phase (late
 * rows are twice as far apart); fibre and the density of the other system go with neither.
 */
export function drawRegion(random: Random): readonly Find[] {
  return Object.entries(SITES).flatMap(([site, [braided, preservation]], place) =>
    Array.from({ length: 30 }, (_, number) => number).flatMap((number) => {
      const phase = random.next() < 0.5 ? ('Early' as const) : ('Late' as const);
      const structure = pick(random.next() < braided ? BRAIDED : WOVEN, random);
      const middle = (structure === 'close twining' ? 4 : 9) * (phase === 'Late' ? 2 : 1);
      const spacing = middle * exp(0.2 * normal(random));
      const density = 6 * exp(0.3 * normal(random));
      const fibre = pick(FIBRES, random);
      const fragments = 1 + random.integer(2) * random.integer(4);
      return Array.from({ length: fragments }, () => ({
        item: `${'OVTKY'[place]}${number + 1}`,
        site,
        phase,
        structure,
        fibre,
        spacing: spacing * exp(0.05 * normal(random)),
        density: density * exp(0.05 * normal(random)),
        preservation,
      }));
    }),
  );
}

/** How one hand writes the finds of a site. */
export interface Hand {
  readonly structures: 'close' | 'broad' | 'mixed';
  readonly fibres: 'close' | 'broad';
  readonly unit: 'mm' | 'cm' | 'rows per 5 cm';
  /** Step of rounding, mm. */
  readonly step: number;
  /** Whether half of the rows abbreviate the site. */
  readonly abbreviates: boolean;
  readonly phases: readonly [early: string, late: string];
  /** Share of readings lost, and of attributions marked as doubtful. */
  readonly gaps: number;
  readonly doubts: number;
  /** Language of structures and fibres. */
  readonly words: 'English' | 'German';
  /** Rows in the order of the finds, or as they came to hand; columns from the left, or from the right. */
  readonly order: 'as found' | 'otherwise';
}

export interface Recording {
  readonly hands: readonly Hand[];
  /** Item numbers: said to be the object's, there but not confirmed, or none. */
  readonly items: 'confirmed' | 'not confirmed' | 'none';
  /** Whether somebody has said which spellings of a site or phase are one. */
  readonly namesDecided: boolean;
  /** A file a site, or all sites in one, whose columns have one unit and one order. */
  readonly files: 'a site each' | 'one';
}

const CAREFUL: Hand = {
  structures: 'close',
  fibres: 'close',
  unit: 'mm',
  step: 0.1,
  abbreviates: false,
  phases: ['Early', 'Late'],
  gaps: 0,
  doubts: 0,
  words: 'English',
  order: 'as found',
};
export const CAREFULLY: Recording = {
  hands: Object.keys(SITES).map(() => CAREFUL),
  items: 'confirmed',
  namesDecided: true,
  files: 'a site each',
};

const oneOf = <T>(options: readonly T[], random: Random): T => options[random.integer(options.length)];

export function drawRecording(random: Random): Recording {
  return {
    hands: Object.keys(SITES).map(() => ({
      structures: oneOf(['close', 'close', 'broad', 'mixed'] as const, random),
      fibres: oneOf(['close', 'close', 'broad'] as const, random),
      unit: oneOf(['mm', 'mm', 'cm', 'rows per 5 cm'] as const, random),
      step: oneOf([0.1, 0.5, 1, 2], random),
      abbreviates: random.next() < 0.3,
      phases: oneOf(
        [
          ['Early', 'Late'],
          ['early', 'late'],
          ['Earl', 'Late'],
          ['früh', 'spät'],
        ] as const,
        random,
      ),
      gaps: oneOf([0, 0.1, 0.3], random),
      doubts: oneOf([0, 0.1, 0.25], random),
      words: oneOf(['English', 'English', 'German'] as const, random),
      order: oneOf(['as found', 'otherwise'] as const, random),
    })),
    items: oneOf(['confirmed', 'confirmed', 'not confirmed', 'none'] as const, random),
    namesDecided: random.next() < 0.5,
    files: oneOf(['a site each', 'a site each', 'one'] as const, random),
  };
}

const BROAD: Readonly<Record<string, string>> = {
  'open twining': 'twined',
  'close twining': 'twined',
  '2/2 twill': 'twill',
  'lime bast': 'tree bast',
  'willow bast': 'tree bast',
};
/** Words of catalogues in German (common practice, no source). */
const GERMAN: Readonly<Record<string, string>> = {
  twined: 'Zwirnbindung',
  'open twining': 'offene Zwirnbindung',
  'close twining': 'dichte Zwirnbindung',
  tabby: 'Leinwandbindung',
  twill: 'Köper',
  '2/2 twill': 'Köper 2/2',
  'knotted netting': 'geknotetes Netz',
  coiled: 'Wulsttechnik',
  'tree bast': 'Baumbast',
  'lime bast': 'Lindenbast',
  'willow bast': 'Weidenbast',
  flax: 'Flachs',
  'sheep wool': 'Schafwolle',
};
const SHORT: Readonly<Record<string, string>> = {
  'Ostrel Hollow': 'Ostrel Holl.',
  'Vanmere Gate': 'Vanmere Gt',
  'Tull Barrow': 'Tull Barr.',
  'Keshem Quay': 'Keshem Qy',
  'Yarrin Field': 'Yarrin Fld',
};

/** A site by its full name. */
export const inFull = (name: string): string =>
  Object.entries(SHORT).find(([, short]) => short === name)?.[0] ?? name;

/** The study that somebody would make of these tables, with the questions to be asked of it. */
export function writeStudy(
  finds: readonly Find[],
  { hands, items, namesDecided, files: kept }: Recording,
  analyses: StudyInput['analyses'],
  random: Random,
): { readonly study: StudyInput; readonly files: ReadonlyMap<string, Uint8Array> } {
  const numbered = items !== 'none';
  const tables = Object.keys(SITES).map((site, place) => {
    // In one file a column has one unit, and the columns one order.
    const { unit, order } = hands[kept === 'one' ? 0 : place];
    const own = finds.filter((find) => find.site === site);
    const rows = rowsOf(own, { ...hands[place], unit }, numbered, random.stream(site));
    const turned = (cells: readonly string[]) => (order === 'otherwise' ? [...cells].reverse() : cells);
    return {
      file: `${site.split(' ')[0].toLowerCase()}.csv`,
      head: turned(headOf(unit, numbered)).join(','),
      lines: rows.map((cells) => turned(cells).join(',')),
    };
  });
  const whole = { file: 'all.csv', head: tables[0].head, lines: tables.flatMap(({ lines }) => lines) };
  const files = new Map(
    (kept === 'one' ? [whole] : tables).map(
      ({ file, head, lines }) => [file, new TextEncoder().encode([head, ...lines, ''].join('\n'))] as const,
    ),
  );
  const names = [
    ...Object.entries(SHORT).map(([name, short]) => ({ attribute: 'site', name, also: [short] })),
    { attribute: 'phase', name: 'Early', also: ['Earl', 'früh'] },
    { attribute: 'phase', name: 'Late', also: ['spät'] },
  ];
  return {
    files,
    study: {
      title: 'The same finds, written down otherwise',
      seed: 5,
      ...(items === 'confirmed' ? { witness: { is: 'column' as const } } : {}),
      sources: [...files.keys()].map((file) => ({ file })),
      ...(namesDecided ? { names } : {}),
      analyses,
    },
  };
}

function headOf(unit: Hand['unit'], numbered: boolean): readonly string[] {
  return [
    'No.',
    ...(numbered ? ['Item'] : []),
    'Site',
    'Phase',
    'Structure',
    'Fibre',
    unit === 'rows per 5 cm' ? 'Active rows per 5 cm' : `Row spacing (${unit})`,
    'Passive elements per cm',
    'Preservation',
  ];
}

function rowsOf(
  finds: readonly Find[],
  hand: Hand,
  numbered: boolean,
  random: Random,
): readonly (readonly string[])[] {
  const said = (word: string) => (hand.words === 'German' ? GERMAN[word] : word);
  const rows = finds.map((find, row) => {
    const word = (kind: string, depth: Hand['structures']) =>
      said(depth === 'broad' || (depth === 'mixed' && random.next() < 0.3) ? (BROAD[kind] ?? kind) : kind);
    const doubt = random.next() < hand.doubts ? ' ?' : '';
    // Charring hides the fibre, water swells and moves the rows: gaps go with how the finds were kept.
    const lost = (share: number) => random.next() < share;
    return [
      `${find.site[0]}${row + 1}`,
      ...(numbered ? [find.item] : []),
      hand.abbreviates && random.next() < 0.5 ? SHORT[find.site] : find.site,
      hand.phases[find.phase === 'Early' ? 0 : 1],
      `${word(find.structure, hand.structures)}${doubt}`,
      lost(hand.gaps * (find.preservation === 'charred' ? 2 : 0.5)) ? '' : word(find.fibre, hand.fibres),
      !find.structure.includes('twining') || lost(hand.gaps * (find.preservation === 'waterlogged' ? 2 : 0.5))
        ? ''
        : written(find.spacing, hand),
      lost(hand.gaps) ? '' : rounded(find.density, hand.step / 2),
      find.preservation,
    ];
  });
  return hand.order === 'otherwise' ? shuffled(rows, random) : rows;
}

function shuffled<T>(list: readonly T[], random: Random): readonly T[] {
  const own = [...list];
  for (let at = own.length - 1; at > 0; at--) {
    const other = random.integer(at + 1);
    [own[at], own[other]] = [own[other], own[at]];
  }
  return own;
}

function written(spacing: number, { unit, step }: Hand): string {
  if (unit === 'mm') return rounded(spacing, step);
  if (unit === 'cm') return rounded(spacing / 10, step / 10);
  return rounded(50 / spacing, 0.5);
}

function rounded(value: number, step: number): string {
  const whole = Math.max(1, Math.round(value / step));
  return String(Number((whole * step).toPrecision(6)));
}
