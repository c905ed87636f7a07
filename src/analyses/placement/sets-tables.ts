import { fewestToExclude } from '../../numerics/tests/conformal.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import type { PlacementFound } from './found.ts';
import type { JudgedLabel, LabelRanking, LabelSet } from './sets-found.ts';

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
      { id: 'rank', label: 'order of likelihood' },
      { id: 'share', label: 'share of likelihood' },
      { id: 'p', label: 'p' },
      { id: 'distance', label: 'mean distance to its nearest' },
      ...levels.map((level) => ({ id: levelId(level), label: `at ${printLevel(level)}` })),
    ],
    rows: inOrder(judged).map(({ attribute, label, size, by, judgedBy, likelihood, outcome, verdicts }) => [
      attribute,
      label,
      size,
      by,
      'why' in outcome ? judgedBy : outcome.n,
      ...(likelihood === null ? [null, null] : [likelihood.rank, likelihood.share]),
      ...('why' in outcome ? [outcome, outcome] : [outcome.p, outcome.score]),
      ...verdicts.map(({ verdict }) => verdict),
    ]),
    note:
      `Conformal p values per label (Vovk, Gammerman & Shafer 2005) from the mean distance to the ${options.neighbours} ` +
      `nearest records of the label. Fewer than ${levels.map((level) => `${fewestToExclude(level)} at ${printLevel(level)}`).join(', ')} are too few to judge. Labels stand in order of ` +
      'likelihood (table "How often the order is right"); shares hold if all labels are equally likely beforehand and the find is of one of them.',
  };
}

/** Labels attribute by attribute, likeliest first. */
export function inOrder(judged: readonly JudgedLabel[]): readonly JudgedLabel[] {
  const place = (one: JudgedLabel) => one.likelihood?.rank ?? Infinity;
  return [...new Set(judged.map(({ attribute }) => attribute))].flatMap((attribute) =>
    judged.filter((one) => one.attribute === attribute).sort((a, b) => place(a) - place(b)),
  );
}

/** How often the order of an attribute's labels is right. */
export function rightSaid({ by, accuracy }: LabelRanking): string {
  if ('why' in accuracy) return 'how often that is right cannot be told';
  const { leftOut, right, nearestRight, verdict } = accuracy;
  const guess = verdict === 'no better than a guess' ? 'no better than a guess, ' : '';
  const what = by === 'sites' ? 'with their whole sites' : 'in turn';
  return `${guess}right for ${right} of ${leftOut} records left out ${what}, a plain nearest neighbour for ${nearestRight}`;
}

/** How often the likeliest label is the own one of records left out in turn, beside the plainest way to name one. */
export function orderTable({ rankings }: PlacementFound): ResultTable {
  return {
    title: 'How often the order is right',
    columns: [
      { id: 'attribute', label: 'attribute' },
      { id: 'by', label: 'left out in turn' },
      { id: 'first', label: 'likeliest for the find' },
      { id: 'n', label: 'records judged so' },
      { id: 'right', label: 'own label first' },
      { id: 'nearestRight', label: 'nearest record has the own label' },
      { id: 'labels', label: 'labels' },
      { id: 'verdict', label: 'the order is' },
      { id: 'said', label: 'in words' },
    ],
    rows: rankings.map((ranking): TableCell[] => {
      const { attribute, by, order, accuracy } = ranking;
      return [
        attribute,
        by === 'sites' ? 'whole sites' : 'records, with their items',
        order[0]?.label ?? null,
        ...('why' in accuracy
          ? [accuracy, accuracy, accuracy, null, null]
          : [accuracy.leftOut, accuracy.right, accuracy.nearestRight, accuracy.labels, accuracy.verdict]),
        rightSaid(ranking),
      ];
    }),
    briefly: ['attribute', 'n', 'right', 'nearestRight', 'verdict'],
    note: 'Likelihood of a label: kernel density of its records about the find, shrunken towards that of all; its width is chosen by leaving out, each record judged by a width chosen without it. Records whose label no other carries cannot be judged so.',
  };
}

/** Column of a level in the table of labels: "at90". */
export function levelId(level: number): string {
  return `at${Number((level * 100).toPrecision(6))}`;
}
