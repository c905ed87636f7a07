import { AMBIGUOUS_TERMS } from '../../src/attributes/ambiguous.ts';
import type { AttributeDefinition, Term, Vocabulary } from '../../src/attributes/definition.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { SURVIVAL, type Survivals } from '../../src/attributes/survival.ts';

const BLOCKS = [
  ['structure', 'Structure', 'weighed in a dissimilarity'],
  ['spacing', 'Spacing and elements', 'weighed in a dissimilarity'],
  ['fibre', 'Fibre', 'weighed in a dissimilarity'],
  ['find', 'The find', 'described, compared only when asked'],
  ['context', 'Context', 'groups and dates, never compared'],
] as const;

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
      '| id | attribute | scale | unit | usual | applies to | how it is measured |',
      '|---|---|---|---|---|---|---|',
      ...all.filter((attribute) => attribute.block === block).map(attributeLine),
      '',
    ]),
    '# Vocabularies',
    '',
    'A term may stop at any level: the broader term is itself a term. Words are recognised whatever their',
    'case, accents and hyphens, in English, German, French, Italian, Spanish, Danish, Norwegian and Latin.',
    '',
    ...[...vocabularies.values()].flatMap(vocabularySection),
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
