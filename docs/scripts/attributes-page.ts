import { AMBIGUOUS_TERMS } from '../../src/attributes/ambiguous/terms.ts';
import type { AttributeDefinition, OrientedBy, Term, Vocabulary } from '../../src/attributes/definition.ts';
import { LOOK_ALIKES } from '../../src/attributes/look-alikes.ts';
import { METHOD_REACH } from '../../src/attributes/method-reach.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { SURVIVAL, type Survivals } from '../../src/attributes/survival.ts';

const BLOCKS = [
  ['structure', 'Structure', 'weighed in a dissimilarity'],
  ['spacing', 'Spacing and elements', 'weighed in a dissimilarity'],
  ['fibre', 'Fibre', 'weighed in a dissimilarity'],
  ['find', 'The find', 'described, compared only when asked'],
  ['context', 'Context', 'groups and dates, never compared'],
] as const;

/** What orientation does to a value, in few words. */
const ORIENTED: Readonly<Record<OrientedBy, string>> = {
  free: 'nothing',
  swaps: 'the systems taken the other way round exchange their values',
  inverts: 'the systems taken the other way round, it is one divided by itself',
  sign: 'the systems taken the other way round, it changes its sign',
  turns: 'a quarter turn exchanges S and Z, and so does an impression',
  mirrors: 'turning does nothing; an impression exchanges S and Z',
  faces: 'the faces may differ: the one seen is said',
  edge: 'told by an edge or the shape alone',
};

/** The page docs/attributes.md, made from the definitions. */
export function attributesPage(): string {
  const { attributes, vocabularies } = defaultRegister();
  const all = [...attributes.values()];
  return [
    '# What can be recorded',
    '',
    '*Made by `npm run attributes` from `src/attributes/`; do not edit by hand.*',
    '',
    'A study adds attributes and terms of its own under `attributes` and `terms` (docs/file-formats.md).',
    'Bounds only flag a reading for a second look; nothing is left out for them.',
    '',
    ...BLOCKS.flatMap(([block, title, use]) => [
      `## ${title}`,
      '',
      `*${use}*`,
      '',
      '| id | attribute | scale | unit | usual | applies to | what it is | how it is counted or told | orientation | source |',
      '|---|---|---|---|---|---|---|---|---|---|',
      ...all.filter((attribute) => attribute.block === block).map(attributeLine),
      '',
    ]),
    '# Vocabularies',
    '',
    'A term may stop at any level: the broader term is itself a term. Words are recognised whatever their',
    'case, accents and hyphens, in English, German, French, Italian, Spanish, Danish, Norwegian and Latin.',
    '',
    'Looked through word by word, language by language, on 2026-11-30 by one reader, no native speaker of all of them (2,807 wordings of terms; those of descriptions in part): 54 were changed.',
    'Two said another thing (“ligesidet” is the 2/2 twill, “stargræsser” are sedges proper); 52 were taken as more exact than they are and are',
    'now asked about or read more broadly: willow without a word of bast, “bulrush”, “spun”, “peat”, “four-end”, “Geflecht” and their like. From common',
    'practice and memory, by no native speaker of all eight.',
    '',
    ...[...vocabularies.values()].flatMap(vocabularySection),
    ...workedSection(all),
    ...methodsSection(vocabularies),
    ...lookAlikesSection(),
    ...survivalSection(vocabularies),
  ].join('\n');
}

function attributeLine(attribute: AttributeDefinition): string {
  const { id, label, scale, unit = '', plausible, appliesTo, definition = '', derived } = attribute;
  const usual = plausible?.usual === undefined ? '' : `${plausible.usual[0]}–${plausible.usual[1]}`;
  return row([
    `\`${id}\``,
    label,
    derived ? `${scale}, derived` : scale,
    unit,
    usual,
    (appliesTo ?? ['all']).join(', '),
    definition,
    attribute.counted ?? '',
    attribute.oriented === undefined ? '' : ORIENTED[attribute.oriented],
    attribute.source,
  ]);
}

function vocabularySection({ id, label, terms }: Vocabulary): string[] {
  const ambiguous = AMBIGUOUS_TERMS.filter((entry) => entry.vocabulary === id);
  return [
    `## ${label} (\`${id}\`)`,
    '',
    ...terms.filter((term) => term.parent === undefined).flatMap((term) => tree(term, terms, 0)),
    '',
    ...(ambiguous.length === 0
      ? []
      : [
          'Asked about, never taken:',
          '',
          ...ambiguous.map(({ words, why }) => `- ${words.map((word) => `"${word}"`).join(', ')}: ${why}`),
          '',
        ]),
  ];
}

/** What is computed, by hand. */
function workedSection(all: readonly AttributeDefinition[]): string[] {
  return [
    '# Worked by hand',
    '',
    'What follows from other cells, at the readings as they are printed; the bounds that rounding leaves are carried beside it.',
    'Each line is tried by `tests/specialist/worked-values.test.ts`.',
    '',
    '| attribute | from | by hand | gives |',
    '|---|---|---|---|',
    ...all.flatMap(({ id, worked, unit = '' }) =>
      worked === undefined
        ? []
        : [
            row([
              `\`${id}\``,
              Object.entries(worked.cells)
                .map(([from, cell]) => `${from} ${cell}`)
                .join(', '),
              worked.how,
              `${worked.gives}${typeof worked.gives === 'number' && unit !== '' ? ` ${unit}` : ''}`,
            ]),
          ],
    ),
    '',
  ];
}

/** What each method of identification can tell. */
function methodsSection(vocabularies: ReadonlyMap<string, Vocabulary>): string[] {
  const labelOf = (vocabulary: string, id: string) =>
    vocabularies.get(vocabulary)?.terms.find((term) => term.id === id)?.label ?? id;
  return [
    '# What a method of identification can tell',
    '',
    'A fibre is no surer than its method allows: certain, probable, possible, or not at all (then indeterminate). The nearest',
    'broader fibre named here holds; of several methods the best counts, of a mixture its least sure part. A fibre without a method',
    'stays as it was recorded. Every reading that is lowered stands in the ledger ([methods](methods/identification.md)).',
    '',
    '| method | at best | why | source |',
    '|---|---|---|---|',
    ...METHOD_REACH.map(({ method, fibres, why, source }) =>
      row([
        labelOf('fibreMethod', method),
        Object.entries(fibres)
          .map(([id, { itself, narrower }]) => {
            const label = labelOf('fibre', id);
            return itself === narrower ? `${label} ${itself}` : `${label} ${itself}, narrower ${narrower}`;
          })
          .join('; '),
        why,
        source,
      ]),
    ),
    '',
  ];
}

/** What is easily taken for another. */
function lookAlikesSection(): string[] {
  return [
    '# Look-alikes',
    '',
    'Where a table names one of these, its quality report and the cautions of a study say so; nothing is changed.',
    '',
    '| pair | told apart by | source |',
    '|---|---|---|',
    ...LOOK_ALIKES.map(({ pair, tells, source }) => row([pair, tells, source])),
    '',
  ];
}

/** What could have survived, said to be common practice. */
function survivalSection(vocabularies: ReadonlyMap<string, Vocabulary>): string[] {
  const labelOf = (vocabulary: string, id: string) =>
    vocabularies.get(vocabulary)?.terms.find((term) => term.id === id)?.label ?? id;
  const naming = ({ fibres }: Survivals, survival: string) =>
    Object.keys(fibres)
      .filter((id) => fibres[id] === survival)
      .map((id) => labelOf('fibre', id))
      .join(', ');
  return [
    '# Could it have survived?',
    '',
    'Common practice, and no law: single finds contradict it. A narrower kind of fibre goes before a broader one; what is not',
    'named here is not told. An absence of what is lost says nothing ([conditions](methods/conditions.md)).',
    '',
    '| preservation | lasts: absence says something | lost: absence says nothing | not told | why | source |',
    '|---|---|---|---|---|---|',
    ...SURVIVAL.map((one) =>
      row([
        labelOf('preservation', one.preservation),
        naming(one, 'lasts'),
        naming(one, 'lost'),
        naming(one, 'not told'),
        one.why,
        one.source,
      ]),
    ),
    '',
  ];
}

function tree(term: Term, terms: readonly Term[], depth: number): string[] {
  const words = [...new Set(Object.values(term.synonyms ?? {}).flat())].slice(0, 6).join(', ');
  const line = `${'  '.repeat(depth)}- **${term.label}** (\`${term.id}\`): ${term.definition ?? ''}${words === '' ? '' : ` *${words} …*`}`;
  return [
    line,
    ...terms.filter((child) => child.parent === term.id).flatMap((child) => tree(child, terms, depth + 1)),
  ];
}

function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replace(/\|/g, '\\|')).join(' | ')} |`;
}
