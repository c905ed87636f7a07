import { CELL_STATES } from '../../cells/reading.ts';
import type { Column, NumericColumn } from '../../fragments/table.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';

export interface BoundColumns {
  readonly low?: Column;
  readonly high?: Column;
}

const MEASURED = CELL_STATES.indexOf('measured');

/**
 * One interval column from two that hold its ends ("from" and "to", "min" and "max"). An end that is
 * missing leaves the interval open on that side; ends in the wrong order are turned round and flagged.
 */
export function mergeBounds(pair: BoundColumns, origins: readonly number[], ledger: Ledger): NumericColumn {
  const lower = numeric(pair.low);
  const upper = numeric(pair.high);
  const some = (lower ?? upper)!;
  const rows = origins.length;
  const low = new Float64Array(rows).fill(Number.NaN);
  const high = new Float64Array(rows).fill(Number.NaN);
  const step = new Float64Array(rows).fill(Number.NaN);
  const state = Uint8Array.from(some.state);
  const raw: string[] = [];
  for (let row = 0; row < rows; row++) {
    const from = lower?.low[row] ?? Number.NaN;
    const to = upper?.high[row] ?? Number.NaN;
    const texts = [lower?.raw[row] ?? '', upper?.raw[row] ?? ''].map((text) => text.trim());
    raw.push(texts.every((text) => text === '') ? '' : texts.join(' – '));
    if (Number.isNaN(from) && Number.isNaN(to)) continue;
    const swapped = from > to;
    low[row] = swapped ? to : Number.isNaN(from) ? Number.NEGATIVE_INFINITY : from;
    high[row] = swapped ? from : Number.isNaN(to) ? Number.POSITIVE_INFINITY : to;
    step[row] = lower?.step[row] ?? upper?.step[row] ?? Number.NaN;
    const known = Number.isNaN(from) ? upper! : Number.isNaN(to) ? lower! : null;
    state[row] = known === null ? Math.max(lower!.state[row]!, upper!.state[row]!) : known.state[row]!;
    if (state[row]! > 1) state[row] = MEASURED;
    if (swapped) {
      enter(ledger, {
        row: origins[row]!,
        column: some.attribute.label,
        raw: raw[row]!,
        readAs: `${to} to ${from}`,
        level: 'flagged',
        rule: 'ends-swapped',
        why: 'The lower end is greater than the upper; they were turned round.',
      });
    }
  }
  return { kind: 'numeric', attribute: some.attribute, low, high, state, raw, readings: new Map(), step };
}

function numeric(column: Column | undefined): NumericColumn | undefined {
  return column?.kind === 'numeric' ? column : undefined;
}
