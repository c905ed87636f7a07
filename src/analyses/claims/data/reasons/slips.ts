import type { FragmentTable } from '../../../../fragments/table.ts';
import { numberOf } from '../../../../numerics/printed/printed-number.ts';
import type { Quantity } from '../../reading/terms.ts';
import { rowsOf } from '../values.ts';
import { contributionsTo } from './contribution.ts';
import { fits, gives, IN_UNITS, type Reason, SPREADS, type Trial } from './trial.ts';

/** Slips of the pen and single records: they fit by chance more easily than the others. */
export const SLIPS: readonly Reason[] = [roundedUp, rowSetAside, digitsExchanged];

/** "5.19" for 5.184: away from nought whatever follows. */
function roundedUp({ figure, value }: Trial): string | null {
  const [{ relation, number, percent }] = figure.values;
  if (relation !== '=' || figure.values.length > 1) return null;
  const unit = Number(`1e-${number.decimals}`);
  const gap = numberOf(number) - value;
  const away = Math.sign(value) * gap;
  return away > 0 && away < unit * (1 - 1e-9) && !(percent && value === 0)
    ? 'rounded up instead of to the nearest'
    : null;
}

const ONE_BY_ONE: ReadonlySet<Quantity> = new Set([...IN_UNITS, ...SPREADS, 'n', 'count', 'share', 'ratio']);

const MOST_ROWS = 3000;

function rowSetAside(trial: Trial): string | null {
  const { figure, view } = trial;
  if (!ONE_BY_ONE.has(figure.quantity)) return null;
  const rows = rowsOf(view, figure.select);
  if (rows.length > MOST_ROWS) return null;
  const contribution = contributionsTo(trial);
  const tried = new Map<string, boolean>();
  const fitting = rows.filter((row) => {
    const brings = contribution(row);
    const known = tried.get(brings) ?? gives(trial, { ...view, without: row });
    tried.set(brings, known);
    return known;
  });
  if (fitting.length === 0) return null;
  const [first] = fitting.map((row) => idOf(view.table, row));
  return fitting.length === 1
    ? `one record set aside: ${first}`
    : `one record set aside: ${first}, or another of ${fitting.length}`;
}

function idOf(table: FragmentTable, row: number): string {
  return table.id[row];
}

/** Two neighbouring digits the wrong way round: "14.2" for "41.2". */
function digitsExchanged({ figure, value }: Trial): string | null {
  const [printed, ...others] = figure.values;
  if (others.length > 0) return null;
  const { digits, decimals } = printed.number;
  const text = (digits < 0n ? -digits : digits).toString().padStart(decimals + 1, '0');
  for (let at = 0; at + 1 < text.length; at++) {
    if (text[at] === text[at + 1]) continue;
    const turned = BigInt(text.slice(0, at) + text[at + 1] + text[at] + text.slice(at + 2));
    const number = { digits: digits < 0n ? -turned : turned, decimals };
    if (fits({ ...figure, values: [{ ...printed, number }] }, value))
      return 'two neighbouring digits exchanged';
  }
  return null;
}
