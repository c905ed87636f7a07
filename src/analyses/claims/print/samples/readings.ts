import { quantile } from '../../../../numerics/describing/quantile.ts';
import { chiSquaredUpper } from '../../../../numerics/foundation/distributions.ts';
import { exactly, over, type PrintHabit, total } from '../../../../numerics/printed/range.ts';
import type { FigureCheck, LastDigits } from '../../found.ts';
import { checkByRange, rangeOfFigure, wholeOf } from '../../judging/check.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import type { Evidence, Sample } from '../evidence.ts';

/** Figures of a sample against the column of its single readings, where that is printed too. */
export function checkReadings({ samples }: Evidence): FigureCheck[] {
  return samples.flatMap((sample) => {
    const readings = sample.figures.filter(({ quantity, vague }) => quantity === 'reading' && !vague);
    return readings.length < 2 ? [] : fromReadings(sample, readings);
  });
}

function fromReadings(sample: Sample, readings: readonly PrintedFigure[]): FigureCheck[] {
  const n = readings.length;
  const ends = (habit: PrintHabit) => readings.map((reading) => rangeOfFigure(reading, habit));
  const at = (share: number) => (habit: PrintHabit) => {
    const list = ends(habit);
    return {
      low: quantileOf(
        list.map(({ low }) => low),
        share,
      ),
      high: quantileOf(
        list.map(({ high }) => high),
        share,
      ),
    };
  };
  const ways = {
    mean: (habit: PrintHabit) => over(total(ends(habit)), exactly(n)),
    total: (habit: PrintHabit) => total(ends(habit)),
    min: at(0),
    median: at(0.5),
    max: at(1),
  } as const;
  const checks = (Object.keys(ways) as (keyof typeof ways)[]).flatMap((quantity) => {
    const figure = sample.one(quantity);
    return figure === undefined
      ? []
      : [
          checkByRange(figure, ways[quantity], {
            name: `${quantity} of the printed readings`,
            working: (found) => `The ${n} printed readings give ${found}.`,
            resolve: 'Say which readings entered the figure.',
            with: readings,
            misfit: 'differs',
          }),
        ];
  });
  const own = sample.one('n');
  const count = wholeOf(own);
  if (own === undefined || count === null) return checks;
  return [
    ...checks,
    {
      figure: own.id,
      name: 'number of printed readings',
      from: 'print',
      outcome: count === n ? 'agrees' : 'differs',
      working: `${n} readings are printed.`,
      ...(count === n ? {} : { resolve: 'Say which readings were set aside or left unprinted.' }),
      with: readings.map(({ id }) => id),
    },
  ];
}

function quantileOf(values: readonly number[], share: number): number {
  const found = quantile(values, share);
  return typeof found === 'number' ? found : Number.NaN;
}

/** Expected frequencies below 5 make chi-squared unreliable (Cochran 1954, Biometrics 10:417). */
const FEWEST = 50;

/** Chance below which the digits are called uneven; strict, as many columns are looked at. Common practice, no source. */
const UNEVEN = 0.001;

/**
 * Terminal-digit test: are the last printed digits of a column even? Readings to halves or fives show at
 * once. It says how finely somebody measured, and is no judgement of a single figure. Readings of the
 * commonest number of decimals, 50 at least. Common practice of survey quality checks.
 */
export function lastDigits({ samples }: Evidence): LastDigits[] {
  return samples.flatMap((sample) => {
    const readings = sample.figures.filter(
      ({ quantity, values: [value] }) => quantity === 'reading' && value.relation === '=',
    );
    const byDecimals = new Map<number, bigint[]>();
    for (const { values } of readings) {
      const [{ number }] = values;
      byDecimals.set(number.decimals, [...(byDecimals.get(number.decimals) ?? []), number.digits]);
    }
    const list = [...byDecimals.values()].sort((a, b) => b.length - a.length)[0] ?? [];
    if (list.length < FEWEST) return [];
    const digits = Array.from({ length: 10 }, () => 0);
    for (const each of list) digits[Number((each < 0n ? -each : each) % 10n)]++;
    const expected = list.length / 10;
    const statistic = digits.reduce(
      (sum, count) => sum + ((count - expected) * (count - expected)) / expected,
      0,
    );
    const p = chiSquaredUpper(statistic, 9);
    return [
      {
        set: sample.figures[0].set,
        attribute: sample.figures[0].attributes.join('; '),
        n: list.length,
        digits,
        zeroOrFive: (digits[0] + digits[5]) / list.length,
        statistic,
        p,
        uneven: p < UNEVEN,
      },
    ];
  });
}
