import type { Column } from '../../fragments/table.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import type { RepeatedIdDecision, RepeatedIdRule } from '../profile/decisions.ts';
import type { RepeatedId } from '../source-reading.ts';

/** An identifier in several rows of one source: found, and settled as the profile says. */

export interface SettledIds {
  readonly repeated: readonly RepeatedId[];
  /** Positions of the rows that are not kept, with the reason. */
  readonly dropped: ReadonlyMap<number, string>;
}

/**
 * Which identifiers stand in several rows, and which of these rows are set aside?
 * @param named identifier of each row, "" where it has none.
 * @param origins row of the grid of each, 1 = first.
 */
export function settleRepeatedIds(
  named: readonly string[],
  origins: readonly number[],
  rule: RepeatedIdRule,
): SettledIds {
  const first = new Map<string, number>();
  const places = new Map<string, number[]>();
  for (const [row, id] of named.entries()) {
    if (id === '') continue;
    const before = first.get(id);
    if (before === undefined) {
      first.set(id, row);
      continue;
    }
    const rows = places.get(id);
    if (rows === undefined) places.set(id, [before, row]);
    else rows.push(row);
  }
  const repeated: RepeatedId[] = [];
  const dropped = new Map<number, string>();
  for (const [id, rows] of places) {
    const decision = own(rule, id) ?? rule.all ?? null;
    repeated.push({ id, rows: rows.map((row) => origins[row]!), decision });
    if (decision !== 'first-only' && decision !== 'last-only') continue;
    const kept = decision === 'first-only' ? rows[0]! : rows.at(-1)!;
    for (const row of rows) {
      if (row !== kept) dropped.set(row, `the same find as row ${origins[kept]}, by decision`);
    }
  }
  return { repeated, dropped };
}

function own(rule: RepeatedIdRule, id: string): RepeatedIdDecision | undefined {
  return rule.ids !== undefined && Object.hasOwn(rule.ids, id) ? rule.ids[id] : undefined;
}

const DECIDED: Readonly<Record<RepeatedIdDecision, string>> = {
  'one-item': 'the rows are fragments of one item',
  'two-finds': 'the rows are different finds',
  'first-only': 'the first row alone is kept',
  'last-only': 'the last row alone is kept',
};

/** A row whose identifier an earlier row has: what it is called, and what is to be decided. */
export function enterRepeated(
  ledger: Ledger,
  row: number,
  column: Column | undefined,
  name: string,
  own: string,
  decision: RepeatedIdDecision | null,
): void {
  enter(ledger, {
    row,
    column: column?.attribute.label ?? '',
    raw: name,
    readAs: own,
    level: decision === null ? 'flagged' : 'read',
    rule: 'duplicate-id',
    why:
      decision === null
        ? `The identifier "${name}" stands in more than one row; the rows of one context count as fragments of one item until "repeatedIds" of the profile says what they are, or "gather" that each is one reading of a fragment.`
        : `The identifier "${name}" stands in more than one row; by decision, ${DECIDED[decision]}.`,
  });
}

/** A decision that decides nothing is a slip, or was made for another state of the file. */
export function enterUnusedDecisions(
  repeated: readonly RepeatedId[],
  rule: RepeatedIdRule,
  ledger: Ledger,
): void {
  const met = new Set(repeated.map(({ id }) => id));
  for (const id of Object.keys(rule.ids ?? {})) {
    if (met.has(id)) continue;
    enter(ledger, {
      row: 0,
      column: '',
      raw: id,
      readAs: '',
      level: 'flagged',
      rule: 'decision-unused',
      why: `The profile decides about the identifier "${id}", which does not stand in several rows.`,
    });
  }
}
