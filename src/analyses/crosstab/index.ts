import type { Analysis } from '../contract.ts';
import { guardVerdict } from '../shared/guard/words.ts';
import { computeCrosstab } from './compute.ts';
import { crosstabFigures } from './figures.ts';
import type { CrosstabFound } from './found.ts';
import { type CrosstabOptions, crosstabOptions } from './options.ts';
import { crosstabTables } from './tables.ts';
import { crosstabWords } from './words.ts';

export const crosstab: Analysis<CrosstabOptions, CrosstabFound> = {
  kind: 'crosstab',
  question: 'Which kinds go with which?',
  options: crosstabOptions,
  always: [
    'The shares of one line add up to 1, unless mixtures count in each of their kinds: where one kind takes more, the others take less.',
    'Of twenty cells about one stands out by chance alone.',
  ],
  compute: computeCrosstab,
  tables: crosstabTables,
  figures: crosstabFigures,
  words: crosstabWords,
  // A gap in what was observed is no missing label; places, phases and the like are.
  labels: ({ rows, columns }, { register }) => {
    const said = [rows, columns].filter(
      (id) => id === 'assemblage' || register.attributes.get(id)?.block === 'context',
    );
    return said.length === 0 ? [rows] : said;
  },
  verdict: ({ told, hangsOn, guard }) => [
    { of: '', told, under: [...(hangsOn.length > 0 ? ['the way of counting'] : []), ...guardVerdict(guard)] },
  ],
};
