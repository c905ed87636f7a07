import { overlap } from '../../../numerics/printed/range.ts';
import type { FigureCheck } from '../found.ts';
import { rangeOfFigure } from '../judging/check.ts';
import { placeAndText } from '../place-words.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { selectionText } from '../reading/select-text.ts';
import { collect, type Evidence } from './evidence.ts';

/**
 * One figure, many places: what is printed of the same records, attribute and statistic in several places, text
 * and table or abstract and caption, must be the same number, each rounded in its own way.
 */
export function checkRepeats({ figures }: Evidence): FigureCheck[] {
  const named = figures.filter((figure) => identityOf(figure) !== null);
  return [...collect(named, (figure) => identityOf(figure) ?? '').values()].flatMap((group) =>
    group.slice(1).map((figure, i) => compare(figure, group.slice(0, i + 1))),
  );
}

/** What, of which records, which statistic; null where the print does not say enough to know. */
export function identityOf(figure: PrintedFigure): string | null {
  const { quantity, attributes, versusText, counted, set, vague, cell, values, level } = figure;
  const selectText = figure.placed === true ? selectionText(figure.select) : figure.selectText;
  if (vague || quantity === 'reading' || values.length > 1 || values[0].relation === '~') return null;
  if (TESTED.has(quantity)) return null;
  // Beside another group a number of records is of either, or of both.
  if (quantity === 'n' && versusText !== '') return null;
  // What stands beside a coefficient is of its model, and not of records.
  if (quantity === 'estimate' || figure.manners.includes('another test')) return null;
  // Which of several records a line of sums is of is not known.
  if ((figure.selectOr ?? []).length > 0) return null;
  // Of two groups intervals are printed of several effects, and in several ways.
  if ((quantity === 'low' || quantity === 'high') && (level === null || versusText !== '')) return null;
  const selected = figure.select.length > 0 || counted.length > 0;
  // A cell of a table of means is named by its row, as a claim of that table is.
  if (OF_A_ROW.has(quantity) && figure.select.length === 0 && selectText !== '' && set !== '')
    return JSON.stringify([quantity, attributes.join(), selectText, versusText, set, level]);
  // Without a selection, only what one set says twice of one attribute is known to be the same.
  const scope = selected ? '' : set;
  if (!selected && (set === '' || cell !== null || (attributes.length === 0 && selectText === '')))
    return null;
  return JSON.stringify([
    quantity,
    figure.method,
    attributes,
    selectText,
    versusText,
    selectionText(counted),
    scope,
    level,
  ]);
}

/** Two tests of the same samples may well print two values of p. */
const TESTED: ReadonlySet<string> = new Set([
  'statistic',
  'df',
  'p',
  'effect',
  'similarity',
  'diversity',
  'share',
]);

const OF_A_ROW: ReadonlySet<string> = new Set([
  'mean',
  'sd',
  'se',
  'median',
  'q1',
  'q3',
  'min',
  'max',
  'iqr',
  'cv',
]);

/** To the same digit two prints of one number are the same; to another, what either stands for must meet. */
function alike(a: PrintedFigure, b: PrintedFigure): boolean {
  const [one, other] = [a.values[0], b.values[0]];
  return one.relation === '=' && other.relation === '=' && one.number.decimals === other.number.decimals
    ? one.number.digits === other.number.digits
    : overlap(rangeOfFigure(a, 'any'), rangeOfFigure(b, 'any'));
}

function compare(figure: PrintedFigure, earlier: readonly PrintedFigure[]): FigureCheck {
  const against = earlier.find((other) => !alike(other, figure));
  const base = { figure: figure.id, name: 'same figure elsewhere', from: 'print' } as const;
  if (against === undefined)
    return {
      ...base,
      outcome: 'passes',
      working: `It is printed alike elsewhere: ${earlier.map(placeAndText).join('; ')}.`,
      with: [],
    };
  return {
    ...base,
    outcome: 'differs',
    working: `The same figure is printed otherwise elsewhere: ${placeAndText(against)}; here: ${figure.printed}.`,
    resolve: 'Look up which of the two was meant.',
    with: [against.id],
  };
}
