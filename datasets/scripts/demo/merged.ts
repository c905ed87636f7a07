import type { Random } from '../../../src/numerics/foundation/random.ts';
import type { Fragment } from './fragments.ts';
import { type Catalogue, chosen, createTally } from './mess.ts';
import type { Kind } from './scenario.ts';
import { csvBytes, type FileForm, toHalf, written } from './text.ts';

/** Pellunar Wreck: two systems in one cell, twist and ply in one notation, sizes as "60 x 40". */

const FORM: FileForm = { delimiter: ',', encoding: 'utf-8', lineEnd: '\n' };

const HEADER = [
  'No',
  'Textile',
  'Structure',
  'Thread count',
  'Row interval (mm)',
  'Twist',
  'Ply 1',
  'Slant',
  'Thread diameter (mm)',
  'Mesh (mm, bar)',
  'Coil pitch (mm)',
  'Stitches per cm',
  'Fiber',
  'Selvedge',
  'Dimensions (mm)',
  'Use',
  'Use inferred from',
];

const STRUCTURE: Readonly<Record<Kind, string>> = {
  'open twining': 'open twining',
  'close twining': 'compact twining',
  'balanced tabby': 'tabby',
  'weft-faced repp': 'tabby, weft-faced',
  'knotted netting': 'knotted netting',
  'coiled basketry': 'coiled',
  'odd piece': 'tablet-woven band',
};

/** "open diagonal twining", the engagement of every twining; "half-basket tabby" beside "tabby". */
function described({ kind, sides }: Fragment['item']): string {
  if (sides.grouping === 'half-basket') return 'half-basket tabby';
  const known = STRUCTURE[kind];
  return sides.engagement === null ? known : known.replace(' twining', ` ${sides.engagement} twining`);
}

export function mergedCatalogue(fragments: readonly Fragment[], random: Random): Catalogue {
  const tally = createTally();
  const withUse = chosen(random, 'use recorded', fragments, 24, () => true);
  const unsure = chosen(
    random,
    'uncertain term',
    fragments,
    4,
    (f) => f.fibre === 'wool' || f.fibre === 'hemp',
  );

  const rows = fragments.map((fragment) => {
    const { kind } = fragment.item;
    const twined = kind.includes('twining');
    const count = threadCount(fragment, tally.add);
    const structure = fragment.vague ? 'twined' : described(fragment.item);
    if (fragment.vague) tally.add('broader term');
    else if (structure !== STRUCTURE[kind]) tally.add('compound description');
    if (unsure.has(fragment)) tally.add('uncertain term');
    return [
      fragment.id,
      fragment.item.id,
      structure,
      count,
      number(
        fragment,
        'rowSpacing',
        (value) => (value < 10 ? written(value, 1) : written(value, 0)),
        tally.add,
      ),
      twists(fragment, tally.add),
      plyOf(fragment, tally.add),
      twined ? (fragment.slant ?? '-') : 'n/a',
      diameters(fragment, tally.add),
      number(fragment, 'meshGauge', (value) => written(value, 0), tally.add),
      number(fragment, 'coilPitch', (value) => written(value, 1), tally.add),
      number(fragment, 'stitchDensity', (value) => written(value, 1), tally.add),
      `${unsure.has(fragment) ? 'cf. ' : ''}${fragment.fibre ?? 'indet.'}`,
      selvedge(fragment, random),
      `${written(fragment.length, 0)} x ${written(fragment.width, 0)}`,
      withUse.has(fragment) ? fragment.item.use : '',
      withUse.has(fragment) ? 'position in the hold' : '',
    ];
  });
  for (let i = 0; i < fragments.length; i++) tally.add('merged size');
  return {
    file: 'pellunar-wreck.csv',
    description: 'Pellunar Wreck: two systems in one cell, twist and ply notations.',
    form: FORM,
    bytes: csvBytes([HEADER, ...rows], FORM),
    fields: HEADER,
    headerRows: [1],
    tally,
    fragments,
  };
}

type Add = (kind: string) => void;

function number(
  fragment: Fragment,
  measure: keyof Fragment['measures'],
  write: (value: number) => string,
  add: Add,
): string {
  const value = fragment.measures[measure];
  if (value === undefined) {
    add('not applicable');
    return 'n/a';
  }
  if (value === null) {
    add('not observed');
    return '-';
  }
  return write(value);
}

/** "14 x 12"; a twined piece has its rows in a column of their own, so that one number stands here. */
function threadCount(fragment: Fragment, add: Add): string {
  const { density1, density2 } = fragment.measures;
  if (density1 === undefined) {
    add('not applicable');
    return 'n/a';
  }
  if (density1 === null || density2 === null) {
    add('not observed');
    return '-';
  }
  if (density2 === undefined) return written(toHalf(density1), 1);
  add('merged count');
  return `${written(density1, 0)} x ${written(density2, 0)}`;
}

function diameters(fragment: Fragment, add: Add): string {
  const { diameter1, diameter2 } = fragment.measures;
  if (diameter1 === undefined || diameter1 === null || diameter2 === null) {
    add('not observed');
    return '-';
  }
  if (diameter2 === undefined) return written(diameter1, 1);
  add('merged diameter');
  return `${written(diameter1, 1)} x ${written(diameter2, 1)}`;
}

/** "Z/S" for two systems, "S" for one; I stands for worked straight. */
function twists(fragment: Fragment, add: Add): string {
  const { twist1, twist2, item } = fragment;
  const letter = (twist: Fragment['twist1']) => (twist === null ? '-' : twist === 'none' ? 'I' : twist);
  if (item.twist2 === null) return letter(twist1);
  add('merged twist');
  return `${letter(twist1)}/${letter(twist2)}`;
}

function plyOf(fragment: Fragment, add: Add): string {
  const { ply1 } = fragment.item;
  if (ply1 === null) return 'n/a';
  if (fragment.twist1 === null) return '-';
  add('ply notation');
  return [ply1, `${ply1[0]}(${ply1.slice(1)})`, `${ply1.slice(1)}${ply1[0]}`][
    fragment.id.charCodeAt(5)! % 3
  ]!;
}

function selvedge(fragment: Fragment, random: Random): string {
  if (!['balanced tabby', 'weft-faced repp', 'odd piece'].includes(fragment.item.kind)) return 'n/a';
  const draw = random.stream(`selvedge ${fragment.id}`).next();
  return draw < 0.2 ? 'plain' : draw < 0.5 ? 'absent' : '-';
}
