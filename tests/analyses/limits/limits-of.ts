import type { ResultTable } from '../../../src/analyses/contract.ts';

/**
 * What the ends that stand in a table are ends of. *Limits* of a sample hold their estimate and have a width; *bounds*
 * are what ranges, gaps or changes leave: they hold their value, where there is one, and may meet.
 */
interface Ends {
  readonly low: string;
  readonly high: string;
  readonly of: string | null;
  readonly are: 'limits' | 'bounds';
}

/** Pairs that are no limits, or whose estimate does not have the same name. Every other `xLow`, `xHigh` limits `x`. */
const NAMED: Readonly<Record<string, Partial<Ends>>> = {
  'summary kinds low': { of: 'share' },
  'summary kindsAtLevel low': { of: 'share' },
  'summary made low': { of: 'share' },
  'summary kinds least': { of: null, are: 'bounds' },
  'summary kindsAtLevel least': { of: null, are: 'bounds' },
  'summary numbers medianLow': { are: 'bounds' },
  'summary numbers q1Low': { are: 'bounds' },
  'summary numbers q3Low': { are: 'bounds' },
  'summary limits censoredLow': { of: null, are: 'bounds' },
  'chronology changes drawnLow': { of: null, are: 'bounds' },
  'chronology slices low': { of: 'expected', are: 'bounds' },
  // What comes and goes together may be expected where no count lies: 20 finds at one in a hundred are none or 20.
  'chronology slices togetherLow': { of: null, are: 'bounds' },
  'contrast tests low': { of: 'epsilonSquared' },
  'crosstab tests low': { of: 'statistic' },
  'crosstab bounds low': { of: null, are: 'bounds' },
  'similarity pairs low': { of: 'likeness' },
  // Of single others with five finds; those of all others together lie anywhere.
  'standing beside low': { of: null, are: 'bounds' },
  'standing likeness low': { of: 'likeness' },
  'standing sameWithin low': { of: 'likeness' },
  'standing unlike low': { of: 'between' },
  'standing axes low1': { of: 'axis1' },
  'standing axes low2': { of: 'axis2' },
  'typology splits low': { of: 'threshold' },
  'typology splits lowSecond': { of: 'second' },
  'placement percentiles low': { of: null, are: 'bounds' },
  'placement simulated least': { of: null, are: 'bounds' },
  'placement moves low': { of: null, are: 'bounds' },
  'threadcount relation low': { of: 'statistic' },
  'threadcount relation rangeLow': { of: 'median', are: 'bounds' },
  'threadcount within low': { of: 'statistic' },
  'threadcount points xLow': { are: 'bounds' },
  'threadcount points yLow': { are: 'bounds' },
};

const HIGH: Readonly<Record<string, string>> = { low: 'high', Low: 'High', least: 'greatest' };

/** Every pair of ends among the columns of a table. */
export function endsOf(kind: string, name: string, { columns }: ResultTable): Ends[] {
  const ids = new Set(columns.map(({ id }) => id));
  return columns.flatMap(({ id: low }) => {
    const high = low.replace(/low|Low|least/, (word) => HIGH[word]);
    if (high === low || !ids.has(high)) return [];
    const own = low.endsWith('Low') ? low.slice(0, -3) : null;
    const ends: Ends = { low, high, of: own, are: 'limits', ...NAMED[`${kind} ${name} ${low}`] };
    if (ends.are === 'limits' && (ends.of === null || !ids.has(ends.of)))
      throw new Error(`${kind} ${name}: nobody has said what ${low} and ${high} are ends of`);
    return [ends];
  });
}

export interface Seen {
  /** Ends that were numbers, and what is wrong with them. */
  readonly ends: number;
  readonly faults: readonly string[];
}

/** Ends of a table that are the wrong way round, leave their own value out, or, where they are limits, meet. */
export function faultsOf(kind: string, name: string, table: ResultTable): Seen {
  const at = (id: string) => table.columns.findIndex((column) => column.id === id);
  let ends = 0;
  const faults = endsOf(kind, name, table).flatMap(({ low, high, of, are }) =>
    table.rows.flatMap((row) => {
      const [least, most] = [row[at(low)], row[at(high)]];
      const value = of === null ? null : row[at(of)];
      const says = `${kind} ${name} ${low}: ${value} in ${least} to ${most}`;
      if (are === 'limits' && (typeof least === 'number') !== (typeof most === 'number'))
        return [`has one end alone: ${says}`];
      if (typeof least !== 'number' || typeof most !== 'number') return [];
      if (are === 'limits' && typeof value !== 'number') return [`has no value to be limits of: ${says}`];
      ends++;
      const slack = 1e-9 * (1 + Math.abs(least) + Math.abs(most));
      return [
        ...(least > most + slack ? [`is the wrong way round: ${says}`] : []),
        ...(typeof value === 'number' && (least > value + slack || value > most + slack)
          ? [`leaves itself out: ${says}`]
          : []),
        ...(are === 'limits' && most - least <= slack ? [`has no width: ${says}`] : []),
      ];
    }),
  );
  return { ends, faults };
}
