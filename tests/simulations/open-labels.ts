/**
 * On open tables, how often does the set hold the true label, and how often does it come first? Each record in turn is a
 * find among the others. Beside it a plain nearest neighbour on the same dissimilarity, and scikit-learn's nearest, five
 * nearest and linear discriminants (tests/references/scripts/open-labels.py), each leaving one out.
 *
 *   npm run simulate -- open-labels, some seconds; the tables are as they are, so that no number of runs is asked.
 */
import type { LabelAttribute } from '../../src/analyses/placement/labels.ts';
import { rankerOf, rankingOf } from '../../src/analyses/placement/ranking.ts';
import { bagOf, typicality } from '../../src/analyses/placement/typicality.ts';
import { valueAt } from '../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { verdictAt } from '../../src/numerics/tests/conformal.ts';
import { comparedTable, labelledTables } from './parts/labelled-tables.ts';

const LEVELS = [0.8, 0.9, 0.95];
const percent = (count: number, of: number) => (of === 0 ? '–' : `${((100 * count) / of).toFixed(1)} %`);

console.log(
  '| table | n | labels | least label | true label in the set at 80 % | at 90 % | at 95 % | of labels that can be judged at 90 % | labels in the 90 % set | none of these at 95 % | true label first | plain nearest | scikit-learn nearest | five nearest | linear discriminants |',
);
console.log(`|${'---|'.repeat(15)}`);
for (const [name, table] of Object.entries(labelledTables)) {
  const { spec, groups } = comparedTable(table);
  const attribute: LabelAttribute = {
    id: 'site',
    label: 'site',
    labels: groups.map((group) => ({ ...group, sites: null })),
    unlabelled: 0,
  };
  const n = table.labels.length;
  const held = LEVELS.map(() => 0);
  let [none, size, judged, judgedHeld] = [0, 0, 0, 0];
  groups.forEach(({ rows }, truth) => {
    for (const row of rows) {
      const record = spec.variables.map((variable) => valueAt(variable, row));
      const outcomes = groups.map((group) => {
        const others = group.rows.filter((one) => one !== row);
        return typicality(bagOf(attribute, group.label, others.length, others, spec, 3), record);
      });
      const verdicts = (level: number) =>
        outcomes.map((one) => ('why' in one ? 'too few to judge' : verdictAt(level, one)));
      LEVELS.forEach((level, at) => {
        if (verdicts(level)[truth] !== 'excluded') held[at]++;
      });
      const at90 = verdicts(0.9);
      size += at90.filter((one) => one !== 'excluded').length;
      if (at90[truth] !== 'too few to judge') {
        judged++;
        if (at90[truth] !== 'excluded') judgedHeld++;
      }
      if (verdicts(0.95).every((one) => one === 'excluded')) none++;
    }
  });
  const ranker = rankerOf(attribute, spec, String, createRandom(1));
  if ('why' in ranker) throw new Error(ranker.why);
  const { accuracy } = rankingOf(
    ranker,
    spec.variables.map((variable) => valueAt(variable, 0)),
  );
  if ('why' in accuracy) throw new Error(accuracy.why);
  const outside = (['nearest', 'five nearest', 'linear discriminants'] as const).map((one) =>
    percent(table.accuracy[one].right, n),
  );
  console.log(
    `| ${[
      name,
      n,
      groups.length,
      Math.min(...groups.map(({ rows }) => rows.length)),
      ...held.map((count) => percent(count, n)),
      percent(judgedHeld, judged),
      (size / n).toFixed(2),
      percent(none, n),
      percent(accuracy.right, n),
      percent(accuracy.nearestRight, n),
      ...outside,
    ].join(' | ')} |`,
  );
}
