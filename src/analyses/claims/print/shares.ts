import { type Fraction, roundingsThatPrint } from '../../../numerics/printed/printed-number.ts';
import { fitOfRoundings } from '../conventions/way.ts';
import type { FigureCheck } from '../found.ts';
import { named, rangeOfFigure, shown, wholeOf } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { selectionText } from '../reading/select-text.ts';
import type { Evidence } from './evidence.ts';

/** Shares against the counts and numbers beside them: is a whole number over n printed so? */
export function checkShares({ sets, tables, figures }: Evidence): FigureCheck[] {
  return [...sets].flatMap(([name, set]) => {
    // Percentages of a printed table are held against their own base there.
    const shares = set.filter(({ quantity, cell }) => quantity === 'share' && cell === null);
    if (shares.length === 0) return [];
    // Among the many cells of other tables some number would fit by chance.
    const bases = figures.filter((figure) => figure.set === name || !tables.has(figure.set));
    return shares.flatMap((share) => checkShare(share, set, bases));
  });
}

function checkShare(
  share: PrintedFigure,
  set: readonly PrintedFigure[],
  all: readonly PrintedFigure[],
): FigureCheck[] {
  if (share.values[0].relation !== '=') return [];
  const counted = selectionText(share.counted);
  const same = (figure: PrintedFigure) =>
    figure.selectText === share.selectText && selectionText(figure.counted) === counted;
  const counts = set.filter((figure) => figure.quantity === 'count' && same(figure));
  const ownCount = counts.find(({ line }) => line === share.line);
  const count = ownCount ?? (counts.length === 1 ? counts[0] : undefined);
  const base = baseOf(share, set);
  if (count !== undefined && base !== undefined) return [shareOfCount(share, count, base, all)];
  if (base !== undefined) return shareOfBase(share, base);
  return count === undefined ? [] : shareOfUnknownBase(share, count);
}

/** n (or the total) of the same selection, or the only one of the set that is of all records. */
function baseOf(share: PrintedFigure, set: readonly PrintedFigure[]): PrintedFigure | undefined {
  const beside = set.find(({ quantity, line }) => quantity === 'n' && line === share.line);
  if (beside !== undefined) return beside;
  for (const quantity of ['n', 'total'] as const) {
    // A total of percentages ("100 %") is no number of records.
    const sizes = set.filter(
      (figure) =>
        figure.quantity === quantity &&
        figure.counted.length === 0 &&
        !figure.values[0].percent &&
        wholeOf(figure) !== null,
    );
    const own = sizes.filter((figure) => figure.selectText === share.selectText);
    if (own.length === 1) return own[0];
    const whole = sizes.filter((figure) => figure.selectText === '');
    if (own.length === 0 && whole.length === 1 && sizes.length === 1) return whole[0];
  }
  return undefined;
}

function shareOfCount(
  share: PrintedFigure,
  count: PrintedFigure,
  base: PrintedFigure,
  all: readonly PrintedFigure[],
): FigureCheck {
  const [over, under] = [wholeOf(count), wholeOf(base)];
  const said = {
    figure: share.id,
    name: 'share of its count',
    from: 'print',
    with: [count.id, base.id],
  } as const;
  if (over === null || under === null || under < 1)
    return {
      ...said,
      outcome: 'open',
      working: `${named(count)} and ${named(base)} are not both whole numbers.`,
    };
  const fraction = { over: BigInt(over), under: BigInt(under) };
  const working = `${named(count)} over ${named(base)} is ${shown(over / under, share)}`;
  const fit = fitOfFraction(fraction, share);
  if (fit !== undefined) return { ...said, ...fit, working: `${working}.` };
  const bases = otherBases(share, over, base, all);
  const resolve = 'State the count and the number of records that the percentage is of.';
  if (bases.length === 1)
    return {
      ...said,
      outcome: 'differs',
      working: `${working}, printed ${share.printed}.`,
      explained: `a share of another base: ${over}/${wholeOf(bases[0])}, ${named(bases[0])}`,
      resolve,
    };
  return {
    ...said,
    outcome: 'cannot be',
    working: `${working}, which does not print as ${share.printed}.`,
    resolve,
  };
}

/** How a fraction agrees with a printed share; undefined where it does not. */
export function fitOfFraction(
  fraction: Fraction,
  share: PrintedFigure,
): Pick<FigureCheck, 'outcome' | 'rounded'> | undefined {
  return fitOfRoundings(roundingsThatPrint(fraction, share.values[0].number));
}

/** Other printed numbers of records of which the count would be this share, each size once. */
function otherBases(
  share: PrintedFigure,
  over: number,
  base: PrintedFigure,
  all: readonly PrintedFigure[],
): PrintedFigure[] {
  const fitting = new Map<number, PrintedFigure>();
  for (const figure of all) {
    const size = wholeOf(figure);
    if (size === null || size < Math.max(1, over) || size === wholeOf(base)) continue;
    if ((figure.quantity !== 'n' && figure.quantity !== 'total') || figure.values[0].percent) continue;
    if (fitOfFraction({ over: BigInt(over), under: BigInt(size) }, share) !== undefined)
      fitting.set(size, figure);
  }
  return [...fitting.values()];
}

/** Whether some whole number of `under` records prints as this share. */
export function sharePossible(share: PrintedFigure, under: number): boolean {
  const value = Number(`${share.values[0].number.digits}e-${share.values[0].number.decimals}`);
  const near = Math.floor(value * under);
  return [near - 1, near, near + 1, near + 2].some(
    (count) =>
      count >= 0 &&
      count <= under &&
      fitOfFraction({ over: BigInt(count), under: BigInt(under) }, share) !== undefined,
  );
}

/** Of n records, only the shares 0/n, 1/n … n/n exist. */
function shareOfBase(share: PrintedFigure, base: PrintedFigure): FigureCheck[] {
  const under = wholeOf(base);
  if (under === null || under < 1) return [];
  const value = Number(`${share.values[0].number.digits}e-${share.values[0].number.decimals}`);
  const near = Math.floor(value * under);
  const counts = [near - 1, near, near + 1, near + 2].filter((count) => count >= 0 && count <= under);
  const fits = counts.flatMap((count) => {
    const fit = fitOfFraction({ over: BigInt(count), under: BigInt(under) }, share);
    return fit === undefined ? [] : [{ count, fit }];
  });
  const said = { figure: share.id, name: 'share that n allows', from: 'print', with: [base.id] } as const;
  if (fits.length === 0) {
    const around = [near, near + 1].filter((count) => count >= 0 && count <= under);
    return [
      {
        ...said,
        outcome: 'cannot be',
        working: `Of ${named(base)}, the nearest shares are ${around.map((count) => `${count}/${under} = ${shown(count / under, share)}`).join(' and ')}; none prints as ${share.printed}.`,
        resolve: 'State the count and the number of records that the percentage is of.',
      },
    ];
  }
  const best = fits.find(({ fit }) => fit.outcome === 'agrees') ?? fits[0];
  const telling = under * 2 <= Number(`1e${share.values[0].number.decimals}`);
  return [
    {
      ...said,
      ...(best.fit.outcome === 'agrees' && !telling ? { outcome: 'passes' as const } : best.fit),
      working: `${best.count}/${under} = ${shown(best.count / under, share)} (of ${named(base)}).`,
    },
  ];
}

/** A count and its share without n: some whole n must give it. */
function shareOfUnknownBase(share: PrintedFigure, count: PrintedFigure): FigureCheck[] {
  const over = wholeOf(count);
  const { low, high } = rangeOfFigure(share, 'any');
  if (over === null || over < 1 || low <= 0) return [];
  const [least, most] = [Math.max(over, Math.floor(over / high)), Math.ceil(over / low)];
  if (most - least > 10_000) return [];
  const fits: number[] = [];
  for (let n = least; n <= most; n++)
    if (fitOfFraction({ over: BigInt(over), under: BigInt(n) }, share) !== undefined) fits.push(n);
  const said = { figure: share.id, name: 'share of its count', from: 'print', with: [count.id] } as const;
  if (fits.length > 0)
    return [
      {
        ...said,
        outcome: 'passes',
        working: `${named(count)} is this share of ${fits.length === 1 ? fits[0] : `${fits[0]} to ${fits[fits.length - 1]}`} records.`,
      },
    ];
  return [
    {
      ...said,
      outcome: 'cannot be',
      working: `No whole number of records has ${named(count)} as ${share.printed}: ${over}/${most} = ${shown(over / most, share)}, ${over}/${least} = ${shown(over / least, share)}.`,
      resolve: 'State the number of records that the percentage is of.',
    },
  ];
}
