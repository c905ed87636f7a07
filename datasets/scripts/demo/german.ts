import type { Random } from '../../../src/numerics/foundation/random.ts';
import type { Fragment } from './fragments.ts';
import { type Catalogue, chosen, createTally } from './mess.ts';
import type { Fibre, Kind, Measure } from './scenario.ts';
import { csvBytes, type FileForm, toHalf, written } from './text.ts';

/** Quorrimel Cave: German, semicolons, decimal commas, Windows-1252, remarks with semicolons. */

const FORM: FileForm = { delimiter: ';', encoding: 'windows-1252', lineEnd: '\r\n' };

const HEADER = [
  'Inv.-Nr.',
  'Objekt',
  'Phase',
  'Bindung',
  'Dichte System 1 (/cm)',
  'Dichte System 2 (/cm)',
  'Reihenabstand (mm)',
  'Drehung System 1',
  'Drehung System 2',
  'Neigung der Reihen',
  'Zwirn System 2',
  'Dm System 1 (mm)',
  'Dm System 2 (mm)',
  'Wulstabstand (mm)',
  'Stiche (/cm)',
  'Faser',
  'Erhaltung',
  'Länge (mm)',
  'Breite (mm)',
  'Bemerkungen',
];

const STRUCTURE: Readonly<Partial<Record<Kind, string>>> = {
  'open twining': 'Zwirnbindung mit Abstand',
  'close twining': 'dichte Zwirnbindung',
  'balanced tabby': 'Leinwandbindung',
  'coiled basketry': 'Spiralwulst',
};

/** "Zwirnbindung mit Abstand, versetzt, mit Flor": openness, engagement and pile of every twining. */
function described({ kind, sides }: Fragment['item']): string {
  if (sides.grouping === 'half-basket') return 'Halbpanama';
  const parts = [STRUCTURE[kind]!];
  if (sides.engagement !== null) parts.push(sides.engagement === 'diagonal' ? 'versetzt' : 'einfach');
  if (sides.pile !== null) parts.push(sides.pile === 'present' ? 'mit Flor' : 'ohne Flor');
  return parts.join(', ');
}

const FIBRE: Readonly<Partial<Record<Fibre, string>>> = {
  'willow bast': 'Weidenbast',
  'tree bast': 'Gehölzbast',
  hemp: 'Hanf',
  rush: 'Binse',
  nettle: 'Brennnessel',
  flax: 'Flachs',
  'palm leaf': 'Palmblatt',
};

const REMARKS = [
  '',
  '',
  '',
  'Kante fehlt',
  'gefaltet; nicht entfaltet',
  'zwei Lagen',
  'Sandkrusten; nicht gereinigt',
];

export function germanCatalogue(fragments: readonly Fragment[], random: Random): Catalogue {
  const tally = createTally();
  const has = (measure: Measure) => (fragment: Fragment) => typeof fragment.measures[measure] === 'number';
  const pick = (name: string, count: number, fits: (fragment: Fragment) => boolean) =>
    chosen(random, name, fragments, count, fits);
  const inCentimetres = pick('unit in cell', 4, has('rowSpacing'));
  const circa = pick('circa', 7, (f) => has('rowSpacing')(f) && !inCentimetres.has(f));
  const range = pick('range', 6, has('density1'));
  const slip = pick(
    'lost decimal comma',
    1,
    (f) => has('density1')(f) && !range.has(f) && f.item.kind === 'open twining',
  );
  const misspelt = pick('misspelt term', 2, (f) => f.item.kind === 'balanced tabby');
  const unsure = pick('uncertain term', 5, (f) => f.fibre === 'flax' || f.fibre === 'willow bast');
  const phaseless = pick('phase missing', 3, (f) => f.id.endsWith('a'));

  const cell = (fragment: Fragment, measure: Measure, write: (value: number) => string): string => {
    const value = fragment.measures[measure];
    if (value === undefined) {
      tally.add('not applicable');
      return 'entfällt';
    }
    if (value === null) {
      tally.add('not observed');
      return 'n.b.';
    }
    return write(value);
  };
  const comma = (digits: number) => (value: number) => written(value, digits, ',');

  const rows = fragments.map((fragment) => {
    const density1 = cell(fragment, 'density1', (value) => {
      if (slip.has(fragment)) {
        tally.add('lost decimal comma');
        return String(Math.round(value * 100));
      }
      if (range.has(fragment)) {
        tally.add('range');
        return `${written(toHalf(value) - 0.5, 1, ',')}–${written(toHalf(value) + 0.5, 1, ',')}`;
      }
      return written(value, 1, ',');
    });
    const spacing = cell(fragment, 'rowSpacing', (value) => {
      if (inCentimetres.has(fragment)) {
        tally.add('unit in cell');
        return `${written(value / 10, 1, ',')} cm`;
      }
      if (circa.has(fragment)) {
        tally.add('circa');
        return `ca. ${written(value, 0)}`;
      }
      return value < 10 ? written(value, 1, ',') : written(value, 0);
    });
    const density2 =
      fragment.item.measures.rowSpacing !== undefined ? '' : cell(fragment, 'density2', comma(1));
    const structure = fragment.vague ? 'Zwirnbindung' : described(fragment.item);
    if (fragment.vague) tally.add('broader term');
    else if (!misspelt.has(fragment) && structure !== STRUCTURE[fragment.item.kind])
      tally.add('compound description');
    if (misspelt.has(fragment)) tally.add('misspelt term');
    if (unsure.has(fragment)) tally.add('uncertain term');
    if (phaseless.has(fragment)) tally.add('phase missing');
    return [
      fragment.id,
      fragment.item.id,
      phaseless.has(fragment) ? '' : { Early: 'früh', Middle: 'mittel', Late: 'spät' }[fragment.item.phase],
      misspelt.has(fragment) ? 'Leinwandbndung' : structure,
      density1,
      density2,
      spacing,
      twist(fragment.twist1, tally.add),
      fragment.item.kind === 'coiled basketry' ? 'entfällt' : twist(fragment.twist2, tally.add),
      fragment.slant ?? (fragment.item.kind.includes('twining') ? 'n.b.' : 'entfällt'),
      ply(fragment),
      cell(fragment, 'diameter1', comma(1)),
      cell(fragment, 'diameter2', comma(1)),
      cell(fragment, 'coilPitch', comma(1)),
      cell(fragment, 'stitchDensity', comma(1)),
      `${unsure.has(fragment) ? 'wohl ' : ''}${fragment.fibre === null ? 'unbestimmt' : FIBRE[fragment.fibre]}`,
      'trocken',
      written(fragment.length, 0),
      written(fragment.width, 0),
      REMARKS[random.stream(`remark ${fragment.id}`).integer(REMARKS.length)]!,
    ];
  });
  rows.splice(
    Math.floor(rows.length / 2),
    0,
    HEADER.map(() => ''),
  );
  tally.add('empty row');
  return {
    file: 'quorrimel-katalog.csv',
    description: 'Quorrimel Cave: German, semicolons, decimal commas, Windows-1252.',
    form: FORM,
    bytes: csvBytes([HEADER, ...rows], FORM),
    fields: HEADER,
    headerRows: [1],
    tally,
    fragments,
  };
}

function twist(direction: Fragment['twist1'], add: (kind: string) => void): string {
  if (direction === null) {
    add('not observed');
    return 'n.b.';
  }
  if (direction === 'none') {
    add('worked straight');
    return 'ungedreht';
  }
  return direction;
}

function ply({ item, twist2 }: Fragment): string {
  if (item.ply2 === null) return 'entfällt';
  return twist2 === null ? 'n.b.' : item.ply2;
}
