import type { GroupStability } from '../../numerics/grouping/stability.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { levelNote } from '../shared/level/said.ts';
import type { Apart } from './apart-found.ts';
import type { Meaning, TypologyFound, Weighed } from './found.ts';
import { column, orWhy } from './table-parts.ts';

export function rivalsTable(found: TypologyFound): ResultTable {
  const line = (judged: Weighed): TableCell[] => {
    const { typology, conditions, assignment, apart, complexity } = judged;
    const typed = assignment.type.filter((type) => type >= 0).length;
    const of = (pick: (apart: Apart) => TableCell): TableCell =>
      'why' in apart ? { why: apart.why } : pick(apart);
    return [
      typology.title,
      typology.types.length,
      conditions,
      typed,
      assignment.rows.length,
      of((a) => orWhy(a.meanSilhouette, (s) => s)),
      of((a) => orWhy(a.difference, (d) => d.rSquared)),
      of((a) => orWhy(a.prediction, (p) => p.balanced)),
      of((a) => orWhy(a.prediction, (p) => p.chance)),
      of((a) => orWhy(a.freeGroups, (g) => orWhy(g.adjustedRand, (r) => r))),
      of((a) => orWhy(a.freeGroups, (g) => leastStable(a, g.stability))),
      complexity.rules,
      complexity.saved,
    ];
  };
  return {
    title: 'Rivals side by side',
    columns: [
      column('typology', 'Typology'),
      column('types', 'types'),
      column('conditions', 'conditions'),
      column('typed', 'typed'),
      column('of', 'of'),
      column('silhouette', 'mean silhouette width'),
      column('share', 'share of variation'),
      column('balanced', 'predicted rightly'),
      column('chance', 'by guessing'),
      column('rand', 'adjusted Rand, free groups'),
      column('stability', 'least stable type, Jaccard'),
      column('rules', 'cost of the rules', 'bit'),
      column('saved', 'saved', 'bit'),
    ],
    rows: [found, ...found.rivals].map(line),
    note: `Silhouette to stability rest on attributes that the rules of each do not use, so they differ between rivals. The bits are told on the same ${found.assignment.rows.length} records and the same ${found.complexity.attributes.length} attributes, which none of them uses; below 0 a typology does not pay for its own rules. No single number decides.`,
  };
}

function leastStable({ labels }: Apart, stability: readonly GroupStability[]): TableCell {
  const means = stability.flatMap(({ mean, resamples }, type) =>
    labels.includes(type) && resamples > 0 ? [mean] : [],
  );
  return means.length === 0 ? { why: 'no type has a record to compare' } : Math.min(...means);
}

export function meaningTable(found: TypologyFound): ResultTable {
  return {
    title: 'What the types go with',
    columns: [
      column('attribute', 'Attribute'),
      column('n', 'n'),
      column('statistic', 'chi-squared'),
      column('df', 'df'),
      column('p', 'p'),
      column('pAdjusted', 'p adjusted'),
      column('v', 'Cramér’s V, corrected'),
      column('method', 'p by'),
      column('strongest', 'strongest departure'),
      column('told', 'go together'),
      column('asRecorded', 'by the words as recorded'),
    ],
    rows: found.meaning.map((meaning) => [
      meaning.label,
      orWhy(meaning.association, ({ n }) => n),
      orWhy(meaning.association, ({ chiSquared }) => chiSquared),
      orWhy(meaning.association, ({ df }) => df),
      meaning.p,
      meaning.pAdjusted,
      orWhy(meaning.association, ({ cramersVCorrected }) => cramersVCorrected),
      meaning.method,
      orWhy(meaning.association, () => strongest(found, meaning)),
      meaning.told,
      meaning.asRecorded ?? meaning.told,
    ]),
    note: `Adjusted over the attributes of this table (Holm). Strongest departure: the cell with the largest adjusted residual.${found.meaning.map(({ label, level }) => (level.differs ? ` ${label}:${levelNote(level, found.unit)}` : '')).join('')}`,
  };
}

function strongest({ typology }: TypologyFound, { types, kinds, strongest: cell }: Meaning): string {
  if (cell === null) return '';
  const sign = cell.residual > 0 ? '+' : '\u2212';
  return `${typology.types[types[cell.type]].label} in ${kinds[cell.kind]}, ${sign}${Math.abs(cell.residual).toFixed(1)}`;
}
