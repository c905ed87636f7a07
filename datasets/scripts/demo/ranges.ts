import type { Random } from '../../../src/numerics/foundation/random.ts';
import type { Fragment } from './fragments.ts';
import { type Catalogue, chosen, createTally } from './mess.ts';
import type { Kind, Measure } from './scenario.ts';
import { csvBytes, type FileForm, written } from './text.ts';

/** Drommavel Landing: burnt pieces, nearly every reading a range, an "about" or a bound. */

const FORM: FileForm = { delimiter: ',', encoding: 'utf-8', lineEnd: '\r\n' };

const HEADER = [
  'Cat. no.',
  'Item',
  'Site',
  'Phase',
  'Technique',
  'Spacing',
  'Row spacing (mm)',
  'Density 1 [per cm]',
  'Density 2 [per cm]',
  'Twist 1',
  'Twist 2',
  'Slant of rows',
  'Mesh gauge, bar (mm)',
  'Diameter 1, mm',
  'Diameter 2, mm',
  'Raw material',
  'State',
  'Length [mm]',
  'Width [mm]',
  'Notes',
];

const STRUCTURE: Readonly<Partial<Record<Kind, string>>> = {
  'close twining': 'twining',
  'balanced tabby': 'tabby',
  'knotted netting': 'knotted net',
};

export function rangesCatalogue(fragments: readonly Fragment[], random: Random): Catalogue {
  const tally = createTally();
  const otherName = chosen(random, 'site written otherwise', fragments, 3, () => true);
  const misspelt = chosen(random, 'misspelt term', fragments, 2, (f) => f.item.kind === 'knotted netting');

  const spread = (fragment: Fragment, measure: Measure, digits: number): string => {
    const value = fragment.measures[measure];
    if (value === undefined) {
      tally.add('not applicable');
      return 'n/a';
    }
    if (value === null) {
      tally.add('not observed');
      return '-';
    }
    const stream = random.stream(`${fragment.id} ${measure}`);
    const form = stream.integer(10);
    const step = 10 ** -digits;
    const low = written(Math.max(value - step, step), digits);
    const high = written(value + step, digits);
    if (form < 4) {
      tally.add('range');
      return form < 2 ? `${low}-${high}` : form < 3 ? `${low}–${high}` : `${low} to ${high}`;
    }
    if (form < 7) {
      tally.add('circa');
      return `${['c. ', 'about ', '~'][form - 4]}${written(value, digits)}`;
    }
    return written(value, digits);
  };
  const bounded = (fragment: Fragment, value: number): string => {
    if (random.stream(`${fragment.id} edge`).integer(4) > 0) return written(value, 0);
    tally.add('lower bound');
    return `${written(value, 0)}+`;
  };

  const rows = fragments.map((fragment) => {
    const twined = fragment.item.kind.includes('twining');
    const netting = fragment.item.kind === 'knotted netting';
    const spacing = spread(fragment, 'rowSpacing', 1);
    if (fragment.vague) tally.add('broader term');
    if (twined && !fragment.vague) tally.add('rows touch');
    if (otherName.has(fragment)) tally.add('site written otherwise');
    if (misspelt.has(fragment)) tally.add('misspelt term');
    return [
      fragment.id,
      fragment.item.id,
      otherName.has(fragment) ? 'Drommavel ldg' : 'Drommavel Landing',
      fragment.item.phase,
      misspelt.has(fragment) ? 'knoted net' : STRUCTURE[fragment.item.kind]!,
      twined ? (fragment.vague ? '?' : 'rows touch') : 'n/a',
      spacing,
      spread(fragment, 'density1', 0),
      twined ? '' : spread(fragment, 'density2', 0),
      fragment.twist1 ?? 'indet.',
      netting ? 'n/a' : (fragment.twist2 ?? 'indet.'),
      twined ? (fragment.slant ?? 'indet.') : 'n/a',
      spread(fragment, 'meshGauge', 0),
      spread(fragment, 'diameter1', 1),
      netting ? 'n/a' : spread(fragment, 'diameter2', 1),
      fragment.fibre ?? 'indet. plant',
      'charred',
      bounded(fragment, fragment.length),
      bounded(fragment, fragment.width),
      fragment.item.kind === 'balanced tabby' ? 'shrunk by burning?' : '',
    ];
  });
  return {
    file: 'drommavel-ranges.csv',
    description: 'Drommavel Landing: ranges, approximations and bounds.',
    form: FORM,
    bytes: csvBytes([HEADER, ...rows], FORM),
    fields: HEADER,
    headerRows: [1],
    tally,
    fragments,
  };
}
