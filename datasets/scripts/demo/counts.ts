import type { Random } from '../../../src/numerics/foundation/random.ts';
import type { Fragment } from './fragments.ts';
import { type Catalogue, chosen, createTally } from './mess.ts';
import type { Kind, Measure } from './scenario.ts';
import { csvBytes, type FileForm, toHalf, written } from './text.ts';

/** Ulvombre Terraces: English, everything counted over 5 cm, sizes in cm, local phase names, one row entered twice. */

const FORM: FileForm = { delimiter: ',', encoding: 'utf-8', lineEnd: '\n' };

const HEADER = [
  'Find no.',
  'Object',
  'Terrace phase',
  'Structure',
  'Passive elements per 5 cm',
  'Active rows per 5 cm',
  'Passive twist',
  'Active twist',
  'Row slant',
  'Passive diameter (mm)',
  'Active diameter (mm)',
  'Coil pitch (mm)',
  'Stitches per 5 cm',
  'Fibre',
  'Preservation',
  'Length (cm)',
  'Width (cm)',
  'Probable use',
  'Basis of use',
  'Remarks',
];

const STRUCTURE: Readonly<Partial<Record<Kind, string>>> = {
  'open twining': 'spaced twining',
  'close twining': 'close twining',
  'balanced tabby': 'plain weave',
  'coiled basketry': 'coiled basketry',
};

/** "spaced diagonal twining, tufted": openness and engagement of every twining, and pile where there is one. */
function described({ kind, sides }: Fragment['item']): string {
  if (sides.grouping === 'half-basket') return 'half-basket weave';
  const known = STRUCTURE[kind]!;
  if (sides.engagement === null) return known;
  const engaged = known.replace(' twining', ` ${sides.engagement} twining`);
  return sides.pile === 'present' ? `${engaged}, tufted` : engaged;
}

export function countsCatalogue(fragments: readonly Fragment[], random: Random): Catalogue {
  const tally = createTally();
  const pick = (name: string, count: number, fits: (fragment: Fragment) => boolean) =>
    chosen(random, name, fragments, count, fits);
  const range = pick('range', 8, (f) => typeof f.measures.density1 === 'number');
  const circa = pick('circa', 6, (f) => typeof f.measures.density1 === 'number' && !range.has(f));
  const otherUnit = pick('unit in cell', 2, (f) => typeof f.measures.diameter2 === 'number');
  const unsure = pick('uncertain term', 4, (f) => f.fibre === 'flax');
  const withUse = pick('use recorded', 30, () => true);
  const twice = pick('row entered twice', 1, (f) => f.item.kind === 'open twining');

  const number = (fragment: Fragment, measure: Measure, write: (value: number) => string): string => {
    const value = fragment.measures[measure];
    if (value === undefined) {
      tally.add('not applicable');
      return 'n/a';
    }
    if (value === null) {
      tally.add('not observed');
      return '?';
    }
    return write(value);
  };

  const rows = fragments.flatMap((fragment) => {
    const passive = number(fragment, 'density1', (value) => {
      const count = Math.round(value * 5);
      if (range.has(fragment)) {
        tally.add('range');
        return `${count - 1}-${count + 1}`;
      }
      if (circa.has(fragment)) {
        tally.add('circa');
        return `c. ${count}`;
      }
      return String(count);
    });
    const active =
      fragment.item.measures.rowSpacing !== undefined
        ? number(fragment, 'rowSpacing', (value) => String(toHalf(50 / value)))
        : number(fragment, 'density2', (value) => String(Math.round(value * 5)));
    const activeDiameter = number(fragment, 'diameter2', (value) => {
      if (!otherUnit.has(fragment)) return written(value, 1);
      tally.add('unit in cell');
      return `${written(value / 10, 2)} cm`;
    });
    const structure = fragment.vague ? 'twined' : described(fragment.item);
    if (fragment.vague) tally.add('broader term');
    else if (structure !== STRUCTURE[fragment.item.kind]) tally.add('compound description');
    if (unsure.has(fragment)) tally.add('uncertain term');
    const row = [
      fragment.id,
      fragment.item.id,
      fragment.item.phase === 'Middle' ? 'Ulv. II' : 'Ulv. III',
      structure,
      passive,
      active,
      twist(fragment.twist1),
      fragment.item.kind === 'coiled basketry' ? 'n/a' : twist(fragment.twist2),
      fragment.item.kind.includes('twining') ? (fragment.slant ?? '?') : 'n/a',
      number(fragment, 'diameter1', (value) => written(value, 1)),
      activeDiameter,
      number(fragment, 'coilPitch', (value) => written(value, 1)),
      number(fragment, 'stitchDensity', (value) => String(Math.round(value * 5))),
      `${fragment.fibre ?? 'indet.'}${unsure.has(fragment) ? ' (prob.)' : ''}`,
      fragment.item.mode,
      written(fragment.length / 10, 1),
      written(fragment.width / 10, 1),
      withUse.has(fragment) ? fragment.item.use : '',
      withUse.has(fragment) ? 'shape and wear' : '',
      '',
    ];
    if (!twice.has(fragment)) return [row];
    tally.add('row entered twice');
    return [row, row];
  });
  return {
    file: 'ulvombre-counts.csv',
    description: 'Ulvombre Terraces: counts per 5 cm, sizes in cm, local phase names, one row entered twice.',
    form: FORM,
    bytes: csvBytes([HEADER, ...rows], FORM),
    fields: HEADER,
    headerRows: [1],
    tally,
    fragments,
  };
}

function twist(direction: Fragment['twist1']): string {
  if (direction === null) return '?';
  return direction === 'none' ? 'straight' : direction;
}
