import { afterAll, describe, expect, it } from 'vitest';
import { checkClaims } from '../../../../src/analyses/claims/compute.ts';
import type { Material } from '../../../../src/analyses/claims/data/check-data.ts';
import type { ClaimsFound } from '../../../../src/analyses/claims/found.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { claimsBytes } from '../claims.ts';
import { COUNT_LAYOUTS } from './count-layouts.ts';
import { WRITERS, type Writer } from './hands.ts';
import { materialOf, type OpenSet, sets } from './material.ts';
import { byKinds, type Printed, SAMPLE_LAYOUTS } from './sample-layouts.ts';
import { sentences } from './sentences.ts';

/**
 * Right figures of eleven open data sets, printed by R's values in nine hands and held against the very records.
 * None may be called impossible, at most one of a thousand differing, and nothing may be left unread.
 */
const tally = {
  figures: 0,
  ofData: 0,
  agree: 0,
  against: [] as string[],
  impossible: [] as string[],
  unread: [] as string[],
};

function count(name: string, found: ClaimsFound): void {
  tally.figures += found.judged.length;
  tally.unread.push(...found.unread.map((one) => `${name}: ${one}`));
  for (const { figure, verdict, why, checks } of found.judged) {
    const said = `${name}, ${figure.id} “${figure.printed}”: ${why}`;
    if (checks.some(({ from, outcome }) => from === 'data' && outcome !== 'open')) tally.ofData++;
    if (verdict.startsWith('agrees')) tally.agree++;
    if (verdict === 'differs') tally.against.push(said);
    if (verdict === 'cannot be') tally.impossible.push(said);
  }
}

const materials = new Map<OpenSet, Material>(sets.map((set) => [set, materialOf(set)]));

function checkTable({ text, says }: Printed, set: OpenSet): ClaimsFound {
  const files = new Map([['t.csv', new TextEncoder().encode(text)]]);
  return checkClaims(
    files,
    { tables: [{ file: 't.csv', ...says }] },
    createRandom(1),
    materials.get(set) ?? null,
  );
}

/** Every layout meets every hand; each set a third of the hands. */
const meets = (set: OpenSet, hand: Writer) => (sets.indexOf(set) + WRITERS.indexOf(hand)) % 3 === 0;

describe('right figures, with the records open', () => {
  it.each(WRITERS)('running text: $name', (hand) => {
    for (const set of sets.filter((one) => meets(one, hand))) {
      const rows = sentences(set, hand).map((row, i) => ({ ...row, id: `${row.quantity} ${i}` }));
      const found = checkClaims(
        new Map([['c.csv', claimsBytes(rows)]]),
        { file: 'c.csv', tables: [] },
        createRandom(1),
        materials.get(set) ?? null,
      );
      count(`${set.data}, ${hand.name}`, found);
    }
  });

  it.each(Object.entries(SAMPLE_LAYOUTS))('tables of samples: %s', (name, layout) => {
    for (const hand of WRITERS)
      for (const set of sets.filter((one) => meets(one, hand)))
        for (const of of byKinds(set)) {
          const printed = layout(of, hand);
          if (printed !== null) count(`${name}, ${set.data}, ${hand.name}`, checkTable(printed, set));
        }
  });

  it.each(Object.entries(COUNT_LAYOUTS))('tables of counts: %s', (name, layout) => {
    for (const hand of WRITERS)
      for (const set of sets.filter((one) => meets(one, hand)))
        for (const of of set.counts)
          count(`${name}, ${set.data}, ${hand.name}`, checkTable(layout(of, set, hand), set));
  });

  afterAll(() => {
    process.stdout.write(
      `right figures with their records: ${tally.figures}, recomputed ${tally.ofData}, agreeing ${tally.agree}; differing ${tally.against.length}, impossible ${tally.impossible.length}, unread ${tally.unread.length}\n`,
    );
  });

  it('are called impossible never, and differing in at most one of a thousand', () => {
    expect(tally.impossible.slice(0, 5)).toEqual([]);
    expect(tally.against.length, tally.against.slice(0, 5).join('\n')).toBeLessThanOrEqual(
      tally.figures / 1000,
    );
    expect(tally.unread.slice(0, 5)).toEqual([]);
    // Silence is no agreement: they were computed again, all but a few that the labels leave open.
    expect(tally.figures).toBeGreaterThan(40_000);
    expect(tally.ofData / tally.figures).toBeGreaterThan(0.98);
    expect(tally.agree / tally.figures).toBeGreaterThan(0.98);
  });
});
