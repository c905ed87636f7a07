import type { Analysis, ToldUnder } from '../contract.ts';
import { guardVerdict } from '../shared/guard/words.ts';
import { computeContrast } from './compute.ts';
import { contrastFigures } from './figures.ts';
import type { AttributeContrast, ContrastFound } from './found.ts';
import { type ContrastOptions, contrastOptions } from './options.ts';
import { contrastTables } from './tables.ts';
import { contrastWords } from './words.ts';

export const contrast: Analysis<ContrastOptions, ContrastFound> = {
  kind: 'contrast',
  question: 'Do these groups differ?',
  options: contrastOptions,
  always: [
    'Of many tests some pass by chance: adjusted p values allow for the others of their family, and what was looked at after the fact is exploration.',
  ],
  compute: computeContrast,
  tables: contrastTables,
  figures: contrastFigures,
  words: contrastWords,
  labels: ({ by }) => [by],
  verdict: ({ attributes, together }) => [
    ...attributes.map(attributeVerdict),
    ...(together === null || 'why' in together ? [] : [{ of: 'together', told: together.told, under: [] }]),
  ],
};

/** Whether the groups are told apart in one attribute and, of two groups, in which direction. */
function attributeVerdict({ samples, told, pairs, guard }: AttributeContrast): ToldUnder {
  const [only] = pairs;
  const larger = samples.tested.length === 2 && only !== undefined ? (only.larger ?? '') : '';
  return { of: samples.attribute.id, told: `${told} ${larger}`, under: guardVerdict(guard) };
}
