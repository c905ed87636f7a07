import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../../src/analyses/claims/compute.ts';
import type { ClaimsFound } from '../../../../src/analyses/claims/found.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { LONG } from '../../../long.ts';
import { check } from '../claims.ts';
import { COUNT_TABLES } from './count-tables.ts';
import { report } from './reports.ts';
import { anovaTable, SAMPLE_TABLES } from './sample-tables.ts';
import { HANDS } from './styles.ts';
import { more } from './values.ts';

/**
 * A second bed of right figures, of other data, styles and layouts than the first: nothing of it was looked at
 * while the reading was written, and what it then showed was mended as a class. Values by R:
 * tests/references/scripts/printed-more.R.
 */
const tally = { figures: 0, against: [] as string[], impossible: [] as string[], unread: [] as string[] };

function count(name: string, found: ClaimsFound): void {
  tally.figures += found.judged.length;
  tally.unread.push(...found.unread.map((one) => `${name}: ${one}`));
  for (const { figure, verdict, why } of found.judged) {
    const said = `${name}, ${figure.id} “${figure.printed}”: ${why}`;
    if (verdict === 'differs') tally.against.push(said);
    if (verdict === 'cannot be') tally.impossible.push(said);
  }
}

function checkTable(text: string, step?: number): ClaimsFound {
  const files = new Map([['t.csv', new TextEncoder().encode(text)]]);
  const says = step === undefined ? {} : { step: String(step) };
  return checkClaims(files, { tables: [{ file: 't.csv', ...says }] }, createRandom(1));
}

/** Every layout meets every style, and every table every third style; without the long run every ninth. */
const TURNS = LONG ? 3 : 9;
const meet = <T>(list: readonly T[], turn: number) => list.filter((_, i) => (i + turn) % TURNS === 0);

describe('a second bed of right figures', () => {
  it.each(HANDS)('reports of tests: $name', (hand) => {
    const turn = HANDS.indexOf(hand);
    const rows = meet(more.tests, turn).flatMap((test, i) => {
      const said = report(test, hand, i * 7 + turn);
      if (said === null) return [];
      const { text, ...row } = said;
      return [{ ...row, id: `${test.kind} ${i}`, printed: text }];
    });
    count(hand.name, check(rows));
  });

  it.each(Object.entries(COUNT_TABLES))('tables of counts: %s', (name, layout) => {
    HANDS.forEach((hand, turn) => {
      for (const table of meet(more.counts, turn))
        count(`${name}, ${hand.name}`, checkTable(layout(table, hand)));
    });
  });

  it.each(Object.entries(SAMPLE_TABLES))('tables of means: %s', (name, layout) => {
    HANDS.forEach((hand, turn) => {
      for (const set of meet(more.samples, turn))
        count(`${name}, ${hand.name}`, checkTable(layout(set, hand), set.step));
    });
  });

  it('analyses of variance', () => {
    HANDS.forEach((hand, turn) => {
      for (const [form, table] of more.anova.entries())
        count(`analysis of variance, ${hand.name}`, checkTable(anovaTable(table, hand, form + turn)));
    });
  });

  it('are called impossible never, and differing in at most one of a thousand', () => {
    process.stdout.write(
      `second bed: ${tally.figures} right figures; differing ${tally.against.length}, impossible ${tally.impossible.length}\n`,
    );
    expect(tally.figures).toBeGreaterThan(LONG ? 40_000 : 12_000);
    expect(tally.impossible.slice(0, 5)).toEqual([]);
    expect(tally.against.length, tally.against.slice(0, 5).join('\n')).toBeLessThanOrEqual(
      tally.figures / 1000,
    );
    expect(tally.unread.slice(0, 5)).toEqual([]);
  });
});
