import type { Random } from '../../../src/numerics/foundation/random.ts';
import type { Fragment } from './fragments.ts';
import { type Catalogue, chosen, createTally } from './mess.ts';
import type { Fibre, Kind, Measure, Mode } from './scenario.ts';
import { csvBytes, type FileForm, written } from './text.ts';

/** Tazzimbe Gallery and Ysketh Pans: Spanish, a title, two header rows, footnotes, a line of totals, a byte-order mark. */

/** Only the first cell of a group of columns is filled, as merged cells are exported. */
const GROUPS: Readonly<Record<number, string>> = {
  0: 'Pieza',
  5: 'Sistema 1',
  9: 'Sistema 2',
  12: 'Filas',
  14: 'General',
};

const FORM: FileForm = { delimiter: ';', encoding: 'utf-8-bom', lineEnd: '\r\n' };

const HEADER = [
  'N.º',
  'Objeto',
  'Yacimiento',
  'Fase',
  'Estructura',
  'densidad (hilos/cm)',
  'torsión',
  'cabos',
  'diámetro (mm)',
  'densidad (hilos/cm)',
  'torsión',
  'diámetro (mm)',
  'separación (mm)',
  'inclinación',
  'Malla (mm)',
  'Fibra',
  'Conservación',
  'Largo (mm)',
  'Ancho (mm)',
  'Observaciones',
];

/** Field names when both header rows are read together, the group first. */
const JOINED = HEADER.map((name, i) => {
  const starts = Object.keys(GROUPS)
    .map(Number)
    .filter((start) => start <= i);
  return `${GROUPS[Math.max(...starts)]} ${name}`;
});

const STRUCTURE: Readonly<Partial<Record<Kind, string>>> = {
  'close twining': 'cordado cerrado',
  'balanced tabby': 'tafetán',
  'weft-faced repp': 'reps de trama',
  'knotted netting': 'red anudada',
};

const FIBRE: Readonly<Partial<Record<Fibre, string>>> = {
  'willow bast': 'líber de sauce',
  rush: 'junco',
  nettle: 'ortiga',
  flax: 'lino',
  wool: 'lana',
  hemp: 'cáñamo',
};

const STATE: Readonly<Partial<Record<Mode, string>>> = { mineralised: 'mineralizado', salt: 'en sal' };

/** "cordado cerrado, en diagonal": the engagement of every twining; "medio panamá" beside "tafetán". */
function described({ kind, sides }: Fragment['item']): string {
  if (sides.grouping === 'half-basket') return 'medio panamá';
  const known = STRUCTURE[kind]!;
  if (sides.engagement === null) return known;
  return `${known}, ${sides.engagement === 'diagonal' ? 'en diagonal' : 'simple'}`;
}

export function spanishCatalogue(fragments: readonly Fragment[], random: Random): Catalogue {
  const tally = createTally();
  const circa = chosen(random, 'circa', fragments, 9, (f) => typeof f.measures.density1 === 'number');
  const marked = chosen(random, 'note mark', fragments, 3, (f) => f.item.mode === 'mineralised');
  const unsure = chosen(random, 'uncertain term', fragments, 6, (f) => f.fibre === 'wool');

  const contrary = chosen(
    random,
    'contradicts its item',
    fragments,
    2,
    (f) => f.id.endsWith('b') && f.item.kind === 'weft-faced repp',
  );

  const number = (fragment: Fragment, measure: Measure, digits: number): string => {
    const value = fragment.measures[measure];
    if (value === undefined) {
      tally.add('not applicable');
      return 'no procede';
    }
    if (value === null) {
      tally.add('not observed');
      return 's. d.';
    }
    const text = written(value, digits, ',');
    if (measure === 'density1' && circa.has(fragment)) {
      tally.add('circa');
      return `aprox. ${text}`;
    }
    return text;
  };

  const rows = fragments.map((fragment) => {
    const { kind, mode, site, phase, id, ply1, twist2 } = fragment.item;
    const twined = kind.includes('twining');
    const usual = described(fragment.item);
    if (fragment.vague) tally.add('broader term');
    else if (usual !== STRUCTURE[kind] && !contrary.has(fragment)) tally.add('compound description');
    if (unsure.has(fragment)) tally.add('uncertain term');
    if (marked.has(fragment)) tally.add('note mark');
    if (contrary.has(fragment)) tally.add('contradicts its item');
    return [
      fragment.id,
      id,
      site.name,
      phase === 'Middle' ? 'media' : 'tardía',
      fragment.vague ? 'cordado' : contrary.has(fragment) ? 'cordado cerrado' : usual,
      number(fragment, 'density1', 0),
      fragment.twist1 ?? 's. d.',
      ply1 === null ? 'no procede' : fragment.twist1 === null ? 's. d.' : ply1,
      number(fragment, 'diameter1', 1),
      twined ? '' : number(fragment, 'density2', 0),
      twist2 === null ? 'no procede' : (fragment.twist2 ?? 's. d.'),
      number(fragment, 'diameter2', 1),
      number(fragment, 'rowSpacing', 1),
      twined ? (fragment.slant ?? 's. d.') : 'no procede',
      number(fragment, 'meshGauge', 0),
      fragment.fibre === null
        ? 'indeterminada'
        : `${FIBRE[fragment.fibre]}${unsure.has(fragment) ? ' ?' : ''}`,
      STATE[mode]!,
      written(fragment.length, 0),
      written(fragment.width, 0),
      marked.has(fragment) ? 'medido sobre molde (*)' : '',
    ];
  });
  const blank = () => HEADER.map(() => '');
  const line = (text: string) => [text, ...HEADER.slice(1).map(() => '')];
  const grid = [
    line('Inventario de tejidos, costa de Othmarel (lugar inventado)'),
    blank(),
    HEADER.map((_, i) => GROUPS[i] ?? ''),
    HEADER,
    ...rows,
    line(`Total: ${rows.length} fragmentos`),
    blank(),
    line('(*) La pieza no se desprendió del mineral; las medidas se tomaron sobre un molde.'),
    line('s. d.: sin dato.'),
  ];
  for (const kind of ['title row', 'empty row', 'total row', 'empty row', 'footnote row', 'footnote row'])
    tally.add(kind);
  return {
    file: 'tazzimbe-ysketh.csv',
    description:
      'Tazzimbe Gallery and Ysketh Pans: Spanish, title row, two header rows, a total and footnotes.',
    form: FORM,
    bytes: csvBytes(grid, FORM),
    fields: JOINED,
    headerRows: [3, 4],
    tally,
    fragments,
  };
}
