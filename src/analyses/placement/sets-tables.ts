import { fewestToExclude } from '../../numerics/tests/conformal.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import type { LabelSet, PlacementFound } from './found.ts';

/** The set of labels that may hold the find, by attribute and level. */
export function setsTable({ sets }: PlacementFound): ResultTable {
  return {
    title: 'Labels that may hold it',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'level', label: 'level' },
      { id: 'asked', label: 'asked for' },
      { id: 'set', label: 'may hold it' },
      { id: 'kept', label: 'cannot be excluded' },
      { id: 'tooFew', label: 'too few to exclude' },
      { id: 'excluded', label: 'excluded' },
    ],
    rows: sets.map((set): TableCell[] => [
      set.attribute,
      set.level,
      set.asked,
      setSaid(set),
      set.kept.join(', '),
      set.tooFew.join(', '),
      set.excluded.join(', '),
    ]),
    briefly: ['attribute', 'level', 'kept', 'tooFew', 'excluded'],
    note: 'A label with too few records to be judged stays among those that may hold the find: nothing is known against it.',
  };
}

/** A set in one cell: "Ness, Holm; too few to exclude: Skerry". */
export function setSaid({ kept, tooFew }: Pick<LabelSet, 'kept' | 'tooFew'>): string {
  const few = tooFew.length === 0 ? [] : [`too few to exclude: ${tooFew.join(', ')}`];
  const said = [...(kept.length === 0 ? [] : [kept.join(', ')]), ...few];
  return said.length === 0 ? 'none of these' : said.join('; ');
}

/** p of every label, and what it says at each level. */
export function typicalityTable({ judged, options }: PlacementFound): ResultTable {
  const levels = (judged[0]?.verdicts ?? []).map(({ level }) => level);
  return {
    title: 'How typical it is of each label',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'label', label: 'label' },
      { id: 'records', label: 'records' },
      { id: 'by', label: 'judged by' },
      { id: 'n', label: 'n' },
      { id: 'p', label: 'p' },
      { id: 'distance', label: 'mean distance to its nearest' },
      ...levels.map((level) => ({ id: levelId(level), label: `at ${printLevel(level)}` })),
    ],
    rows: judged.map(({ attribute, label, size, by, judgedBy, outcome, verdicts }) => [
      attribute,
      label,
      size,
      by,
      'why' in outcome ? judgedBy : outcome.n,
      ...('why' in outcome ? [outcome, outcome] : [outcome.p, outcome.score]),
      ...verdicts.map(({ verdict }) => verdict),
    ]),
    note:
      `Conformal p values per label (Vovk, Gammerman & Shafer 2005) from the mean distance to the ${options.neighbours} ` +
      `nearest records of the label. Fewer than ${levels.map((level) => `${fewestToExclude(level)} at ${printLevel(level)}`).join(', ')} are too few to judge.`,
  };
}

/** Column of a level in the table of labels: "at90". */
export function levelId(level: number): string {
  return `at${Number((level * 100).toPrecision(6))}`;
}
