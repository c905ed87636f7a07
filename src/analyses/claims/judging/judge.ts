import { withTried } from '../conventions/register.ts';
import type { FigureCheck, JudgedFigure, Outcome, Unchecked } from '../found.ts';
import { placeAndText } from '../place-words.ts';
import { collect } from '../print/evidence.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { missingFor, needFor } from './needs.ts';
import { settleByData } from './settle-by-data.ts';

/** From the gravest. */
const WEIGHT: readonly Outcome[] = [
  'cannot be',
  'differs',
  'agrees only if rounded',
  'agrees',
  'passes',
  'open',
];

/** One verdict a figure: the gravest that any check gives; what only passes is not settled. */
export function judge(
  figures: readonly PrintedFigure[],
  checks: readonly FigureCheck[],
  withData: boolean,
): JudgedFigure[] {
  const byFigure = new Map<string, FigureCheck[]>();
  for (const check of checks) byFigure.set(check.figure, [...(byFigure.get(check.figure) ?? []), check]);
  const leaningOn = new Map<string, FigureCheck[]>();
  for (const check of checks)
    for (const id of check.with) leaningOn.set(id, [...(leaningOn.get(id) ?? []), check]);
  const sets = collect(figures, ({ set }) => set);
  const names = new Map(figures.map((figure) => [figure.id, placeAndText(figure)]));
  return figures.map((figure) => {
    const own = settleByData(byFigure.get(figure.id) ?? []);
    const ordered = own
      .map(saysTried)
      .sort(
        (a, b) =>
          WEIGHT.indexOf(a.outcome) - WEIGHT.indexOf(b.outcome) ||
          Number(b.when !== undefined) - Number(a.when !== undefined),
      );
    const [first] = ordered;
    const data = own.find(({ from }) => from === 'data');
    const unheld =
      withData && (data === undefined || data.outcome === 'open')
        ? (data?.missing ?? 'nothing to compute it from')
        : '';
    if (first === undefined || first.outcome === 'passes' || first.outcome === 'open')
      return unsettled(figure, ordered, leaningOn.get(figure.id) ?? [], {
        withData,
        unheld,
        name: (id) => names.get(id) ?? id,
        set: figure.set === '' ? [figure] : (sets.get(figure.set) ?? []),
      });
    return {
      figure,
      verdict: first.outcome,
      says: heldSaying(sayOf(first), unheld),
      checks: ordered,
      why: first.outcome.startsWith('agrees') ? heldWhy(first.working, unheld) : first.working,
      unheld,
      explained: first.explained ?? ordered.find(({ explained }) => explained !== undefined)?.explained ?? '',
      resolve: first.resolve ?? (unheld === '' ? '' : (data?.resolve ?? '')),
    };
  });
}

/** "agrees, not held against the data": what other figures alone say for it is no word of the data. */
function heldSaying(says: string, unheld: string): string {
  return unheld === '' || !says.startsWith('agrees')
    ? says
    : `${says} with other figures, not held against the data`;
}

function heldWhy(why: string, unheld: string): string {
  return unheld === '' ? why : `${why} Not held against the data: ${unheld}.`;
}

/** A figure is called impossible only with the list of what was tried. */
function saysTried(check: FigureCheck): FigureCheck {
  return check.outcome === 'cannot be' ? { ...check, working: withTried(check.working, check.name) } : check;
}

/** "agrees only if rounded by truncation under Welch's degrees of freedom". */
function sayOf({ outcome, rounded, under, when }: FigureCheck): string {
  const how = outcome === 'agrees only if rounded' ? ` ${rounded ?? ''}` : '';
  return `${outcome}${how}${under === undefined ? '' : ` under ${under}`}${when === undefined ? '' : ` when ${when}`}`;
}

/**
 * No check of its own settles the figure. Agreement is mutual: where the figures that rest on it agree with
 * it, it agrees with them; where one does not, either may be the slip.
 */
function unsettled(
  figure: PrintedFigure,
  checks: readonly FigureCheck[],
  leaning: readonly FigureCheck[],
  {
    withData,
    unheld,
    set,
    name,
  }: {
    readonly withData: boolean;
    readonly unheld: string;
    readonly set: readonly PrintedFigure[];
    /** Id -> place and text. */
    readonly name: (id: string) => string;
  },
): JudgedFigure {
  const against = leaning.filter(({ outcome }) => outcome === 'cannot be' || outcome === 'differs');
  const fitting = leaning.filter(({ outcome, coarse }) => outcome.startsWith('agrees') && coarse !== true);
  const passed = checks.filter(({ outcome }) => outcome === 'passes');
  const base = { figure, checks, explained: '', unheld } as const;
  const fromData = checks.find(({ outcome, from }) => outcome === 'open' && from === 'data');
  if (against.length === 0 && fitting.length > 0) {
    const why = `Figures that rest on it agree with it: ${namesOf(fitting, name)}.`;
    return {
      ...base,
      verdict: 'agrees',
      says: heldSaying('agrees', unheld),
      why: heldWhy(why, unheld),
      resolve: fromData?.resolve ?? '',
    };
  }
  const unchecked = { ...base, verdict: 'cannot be checked', says: 'cannot be checked' } as const;
  if (against.length > 0 && fromData === undefined)
    return {
      ...unchecked,
      why: `It and what rests on it cannot both stand as printed: ${namesOf(against, name)}.`,
      resolve: `Settle ${namesOf(against, name)} first.`,
    };
  const open = fromData ?? checks.find(({ outcome }) => outcome === 'open');
  const parts = [
    passed.length > 0 ? `Nothing speaks against it: ${passed.map(({ working }) => working).join(' ')}` : '',
    against.length > 0
      ? `It and what rests on it cannot both stand as printed: ${namesOf(against, name)}.`
      : '',
    open?.working ?? missingFor(figure, set, withData),
  ];
  return {
    ...unchecked,
    why: parts.filter((part) => part !== '').join(' '),
    resolve: open?.resolve ?? needFor(figure, set, withData),
  };
}

const MOST_FIGURES = 4;

function namesOf(checks: readonly FigureCheck[], name: (id: string) => string): string {
  const all = [...new Set(checks.map(({ figure }) => figure))].map(name);
  const more = all.length > MOST_FIGURES ? ` and ${all.length - MOST_FIGURES} more` : '';
  return `${all.slice(0, MOST_FIGURES).join('; ')}${more}`;
}

/** Figures that could not be checked, by what would let them be. */
export function uncheckedByNeed(judged: readonly JudgedFigure[]): readonly Unchecked[] {
  return byNeed(
    judged.filter(({ verdict }) => verdict === 'cannot be checked'),
    ({ resolve }) => resolve,
  );
}

/** Figures that other figures alone speak for or against although data are open, by what is missing. */
export function unheldByNeed(judged: readonly JudgedFigure[]): readonly Unchecked[] {
  return byNeed(
    judged.filter(({ verdict, unheld }) => unheld !== '' && verdict !== 'cannot be checked'),
    ({ unheld }) => unheld,
  );
}

function byNeed(
  judged: readonly JudgedFigure[],
  needOf: (one: JudgedFigure) => string,
): readonly Unchecked[] {
  return [...collect(judged, needOf)].map(([resolve, entries]) => ({ resolve, entries }));
}
