import type { Random } from '../../../numerics/foundation/random.ts';
import type { AnalysisInput } from '../../contract.ts';
import { checkData, type Material } from '../data/check-data.ts';
import { checkPrint } from '../print/check-print.ts';
import { gatherEvidence } from '../print/evidence.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import type { PrintedTable } from '../reading/printed-table.ts';
import { judge } from './judge.ts';

/** The records that figures are held against. */
export type ClaimsMaterial = Material & Pick<AnalysisInput, 'onProgress'>;

function judgeOnce(
  figures: readonly PrintedFigure[],
  tables: readonly PrintedTable[],
  random: Random,
  material: ClaimsMaterial | null,
) {
  const evidence = gatherEvidence(figures, tables);
  const checks = [
    ...checkPrint(evidence, random),
    ...(material === null ? [] : checkData(figures, material, material.onProgress)),
  ];
  return { judged: judge(figures, checks, material !== null), evidence };
}

/**
 * A print that may be two numbers ("1,234") is tried as both: what agrees under the second reading alone is read
 * so, and where neither agrees it is asked which was meant.
 */
export function judgeReadings(
  figures: readonly PrintedFigure[],
  tables: readonly PrintedTable[],
  random: Random,
  material: ClaimsMaterial | null,
) {
  const first = judgeOnce(figures, tables, random, material);
  const doubtful = new Map(
    first.judged
      .filter(
        ({ figure, verdict }) =>
          !verdict.startsWith('agrees') && figure.values.some(({ otherwise }) => otherwise !== undefined),
      )
      .map((one) => [one.figure.id, one]),
  );
  if (doubtful.size === 0) return first;
  const turned = figures.map((figure) => (doubtful.has(figure.id) ? otherReading(figure) : figure));
  const second = judgeOnce(turned, tables, random, material);
  const better = new Set(
    second.judged
      .filter(({ figure, verdict }) => doubtful.has(figure.id) && verdict.startsWith('agrees'))
      .map(({ figure }) => figure.id),
  );
  const settled =
    better.size === 0
      ? first
      : judgeOnce(
          figures.map((figure) => (better.has(figure.id) ? otherReading(figure) : figure)),
          tables,
          random,
          material,
        );
  return {
    ...settled,
    judged: settled.judged.map((one) =>
      doubtful.has(one.figure.id) && one.verdict === 'cannot be'
        ? {
            ...one,
            verdict: 'differs' as const,
            says: 'differs',
            resolve: `Say what is meant by “${one.figure.printed}”: it may be read as two numbers, and neither fits.`,
          }
        : one,
    ),
  };
}

function otherReading(figure: PrintedFigure): PrintedFigure {
  return {
    ...figure,
    values: figure.values.map(({ otherwise, ...value }) =>
      otherwise === undefined ? value : { ...value, number: otherwise },
    ),
  };
}
