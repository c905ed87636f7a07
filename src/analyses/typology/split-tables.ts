import type { ResultTable, TableCell } from '../contract.ts';
import type { TypologyFound } from './found.ts';
import { column, orWhy } from './table-parts.ts';

export function splitTable(found: TypologyFound): ResultTable {
  return {
    title: 'Is there a split at all?',
    columns: [
      column('attribute', 'Attribute'),
      column('n', 'n'),
      column('cuts', 'cut by the rules at'),
      column('scale', 'compared'),
      column('step', 'step of the readings'),
      column('stepMost', 'at most'),
      column('dip', 'dip'),
      column('dipP', 'p of the dip'),
      column('bandwidthP', 'p of one mode, Silverman'),
      column('parts', 'parts preferred'),
      column('ratio', 'likelihood ratio, two against one'),
      column('ratioP', 'p of the ratio'),
      column('threshold', 'threshold'),
      column('low', 'low'),
      column('high', 'high'),
      column('spread', 'parts by'),
      column('second', 'second crossing'),
      column('lowSecond', 'low'),
      column('highSecond', 'high'),
      column('gapFrom', 'no reading from'),
      column('gapTo', 'to'),
      column('valley', 'valley of the density'),
      column('between', 'readings between cut and threshold'),
      column('visible', 'smallest visible distance', 'sd'),
    ],
    rows: found.splits.map((split) => [
      `${split.label}${split.unit === '' ? '' : ` (${split.unit})`}`,
      split.values.length,
      split.cuts.join(', '),
      `${split.logarithm ? 'by logarithm' : 'as measured'}${split.scaleBy === 'fit' ? ', by fit' : ''}`,
      split.steps.least,
      split.steps.most,
      orWhy(split.dip, ({ statistic }) => statistic),
      orWhy(split.dip, ({ p }) => p),
      orWhy(split.bandwidth, ({ p }) => p),
      orWhy(split.best, ({ parts }) => parts.length),
      orWhy(split.twoAgainstOne, ({ statistic }) => statistic),
      orWhy(split.twoAgainstOne, ({ p }) => p),
      orWhy(split.threshold, ({ estimate }) => estimate),
      orWhy(split.threshold, ({ low }) => low),
      orWhy(split.threshold, ({ high }) => high),
      orWhy(split.threshold, ({ spread }) => (spread === 'own' ? 'own spreads' : 'one spread')),
      orWhy(split.threshold, ({ second }) => second?.estimate ?? null),
      orWhy(split.threshold, ({ second }) => second?.low ?? null),
      orWhy(split.threshold, ({ second }) => second?.high ?? null),
      orWhy(split.threshold, ({ gap }) => gap?.low ?? null),
      orWhy(split.threshold, ({ gap }) => gap?.high ?? null),
      split.valley,
      split.answers.map(({ between }) => between).join(', '),
      split.visible.halves,
    ]),
    note: `Dip and Silverman’s test: small p speaks against a single heap, and both must be small, the dip’s at most twice the level, since it is held against its worst case; what they are held against is rounded by the steps of the readings. Parts preferred: by BIC among one to five Gaussian parts, fitted to the intervals that the steps leave open. Threshold, only where the readings are divided: where two parts cross, of one spread or of their own, whichever is better by BIC, with its interval over items drawn again; a second crossing where the wider part reaches round the other; valley: of the kernel density at its critical bandwidth for two peaks. From “no reading from” to “to” any cut parts the same records.${drawnNote(found)}`,
  };
}

/** Where n is a sample. */
function drawnNote({ splits }: TypologyFound): string {
  const drawn = splits.flatMap(({ label, values, drawnFrom }) =>
    drawnFrom === null
      ? []
      : [` ${label}: n is a sample, ${values.length} of ${drawnFrom} readings drawn by chance.`],
  );
  return drawn.join('');
}

export function partsTable(found: TypologyFound): ResultTable {
  return {
    title: 'How many heaps',
    columns: [column('attribute', 'Attribute'), column('parts', 'parts'), column('bic', 'BIC')],
    rows: found.splits.flatMap((split) =>
      split.bic.map(({ parts, bic }): TableCell[] => [split.label, parts, bic]),
    ),
    note: '2 log L minus parameters times ln n: the largest is preferred; differences below 2 are not worth more than a bare mention (Kass & Raftery 1995).',
  };
}

export function movedTable(found: TypologyFound): ResultTable {
  return {
    title: 'If the cut moved',
    columns: [
      column('attribute', 'Attribute'),
      column('cut', 'cut'),
      column('by', 'moved by'),
      column('to', 'to'),
      column('changed', 'change type'),
      column('undecided', 'straddle it'),
      column('n', 'n'),
    ],
    rows: found.moved.map(({ attribute, cut, by, to, changed, undecided, n }) => [
      found.labelOf.get(attribute) ?? attribute,
      cut,
      by,
      to,
      changed,
      undecided,
      n,
    ]),
  };
}

/** What split could have been seen, in halves and with heaps as they are in the claim. */
export function powerTable(found: TypologyFound): ResultTable {
  const { found: taken, samples } = found.takenForTwo;
  return {
    title: 'What could have been seen',
    columns: [
      column('attribute', 'Attribute'),
      column('n', 'n'),
      column('heaps', 'heaps'),
      column('visible', 'smallest visible distance', 'sd'),
      column('distance', 'distance of the two fitted parts', 'sd'),
    ],
    rows: found.splits.flatMap((split): TableCell[][] => {
      const { share, halves, asCut } = split.visible;
      const own = `${Math.round(100 * share)} to ${100 - Math.round(100 * share)} %, as the rules part them`;
      const line = (heaps: string, visible: TableCell): TableCell[] => [
        split.label,
        split.values.length,
        heaps,
        visible,
        orWhy(split.threshold, ({ distance }) => distance),
      ];
      return [line('halves', halves), line(own, asCut)];
    }),
    note: `Simulated: of ${samples} samples of one kind, recorded coarsely, ${taken} were taken for two. The smallest distance between two heaps, in standard deviations within a heap, that the tests that decide find together in 8 samples of 10 of this size at 95 %, by simulation with exact readings; of coarse ones less is seen. The distance of the fitted parts means something only where a split was found.`,
  };
}
