import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../../src/analyses/claims/compute.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { check } from '../claims.ts';
import { at, sets } from './material.ts';

/**
 * One digit altered, without data: by brute force over everything that could stand behind the print it is listed
 * which alterations arithmetic can find at all, and of those at least 95 of a hundred must be found. The brute force
 * knows three roundings and nothing of the checks.
 */
const random = createRandom(5);

function altered(text: string): string {
  const places = [...text.matchAll(/\d/g)].map(({ index }) => index);
  const place = places[Math.floor(random.next() * places.length)];
  const digit = (Number(text[place]) + 1 + Math.floor(random.next() * 9)) % 10;
  return text.slice(0, place) + digit + text.slice(place + 1);
}

/** The value as the three roundings print it, by exact decimal text. */
function prints(over: bigint, under: bigint, decimals: number): Set<string> {
  const scale = 10n ** BigInt(decimals);
  const scaled = over * scale;
  const floor = scaled / under;
  const twice = 2n * (scaled % under);
  const up = twice > under ? 1n : 0n;
  const half = twice === under;
  const text = (whole: bigint) =>
    decimals === 0 ? `${whole}` : `${whole / scale}.${String(whole % scale).padStart(decimals, '0')}`;
  return new Set(
    [floor, half ? floor + 1n : floor + up, half && floor % 2n === 0n ? floor : floor + (half ? 1n : up)].map(
      text,
    ),
  );
}

const against = (found: ReturnType<typeof check>) => found.counts.differs + found.counts['cannot be'] > 0;

interface Count {
  all: number;
  detectable: number;
  found: number;
  missed: string[];
}

function say(what: string, { all, detectable, found, missed }: Count): void {
  process.stdout.write(
    `${what}: ${all} altered, ${((100 * detectable) / all).toFixed(1)} % detectable, found of those ${((100 * found) / detectable).toFixed(1)} %\n`,
  );
  expect(detectable).toBeGreaterThan(50);
  expect(found / detectable, missed.slice(0, 3).join('\n')).toBeGreaterThanOrEqual(0.95);
}

const counts = sets.flatMap(({ counts: tables }) => tables);

describe('one digit altered, without data', () => {
  it('in "12/35 (34.3 %)": each alteration that no count, base and rounding prints', () => {
    const tally: Count = { all: 0, detectable: 0, found: 0, missed: [] };
    for (const { cells } of counts)
      for (const row of cells) {
        const under = row.reduce((sum, one) => sum + one, 0);
        const [over] = row;
        if (under === 0) continue;
        const percent =
          [...prints(BigInt(100 * over), BigInt(under), 1)][1] ??
          [...prints(BigInt(100 * over), BigInt(under), 1)][0];
        const text = `${over}/${under} (${percent} %)`;
        const wrong = altered(text);
        const [, a, b, c] = /^(\d+)\/(\d+) \((\d+\.\d) %\)$/.exec(wrong) ?? [];
        if (a === undefined || Number(b) === 0 || /^0\d/.test(b) || /^0\d/.test(a)) continue;
        tally.all++;
        const possible =
          Number(a) <= Number(b) &&
          prints(BigInt(100 * Number(a)), BigInt(b), 1).has(String(c).replace(/^0+(?=\d)/, ''));
        if (possible) continue;
        tally.detectable++;
        if (against(check([{ id: 'a', quantity: 'count', printed: wrong }]))) tally.found++;
        else tally.missed.push(wrong);
      }
    say('count over base with per cent', tally);
  });

  it('in a mean of whole readings beside n: each that no sum prints', () => {
    const tally: Count = { all: 0, detectable: 0, found: 0, missed: [] };
    for (const { samples, steps, measures } of sets)
      for (const { measure, values } of samples) {
        if (steps[Object.keys(measures).indexOf(measure)] !== 1) continue;
        for (const value of values.flatMap((one) => [one, one, one, one])) {
          const n = value[at.n];
          const sum = BigInt(Math.round(value[at.mean] * n));
          const [text] = prints(sum, BigInt(n), 2);
          const wrong = altered(text);
          if (/^0\d/.test(wrong)) continue;
          tally.all++;
          const near = Math.round(Number(wrong) * n);
          const possible = [-2, -1, 0, 1, 2].some(
            (by) => near + by >= 0 && prints(BigInt(near + by), BigInt(n), 2).has(wrong),
          );
          if (possible) continue;
          tally.detectable++;
          const found = check([
            { id: 'n', set: 's', quantity: 'n', printed: String(n) },
            { id: 'm', set: 's', quantity: 'mean', step: '1', printed: wrong },
          ]);
          if (against(found)) tally.found++;
          else tally.missed.push(`${wrong} of ${n}`);
        }
      }
    say('mean of whole readings', tally);
  });

  it('in a table of counts with both totals: each of them', () => {
    const tally: Count = { all: 0, detectable: 0, found: 0, missed: [] };
    for (const { cells, rowTerms, columnTerms } of counts)
      for (let turn = 0; turn < 6; turn++) {
        const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
        const body = cells.map((row) => [...row, sum(row)]);
        const table = [...body, body[0].map((_, c) => sum(body.map((row) => row[c])))].map((row) =>
          row.map(String),
        );
        const [r, c] = [table.length, table[0].length].map((size) => Math.floor(random.next() * size));
        const wrong = altered(table[r][c]);
        if (/^0\d/.test(wrong)) continue;
        tally.all++;
        // A cell is in two sums, and one of them cannot follow it.
        tally.detectable++;
        table[r][c] = wrong;
        const text = [
          ['', ...columnTerms, 'Total'],
          ...table.map((row, i) => [rowTerms[i] ?? 'Total', ...row]),
        ]
          .map((row) => row.join(';'))
          .join('\n');
        const found = checkClaims(
          new Map([['t.csv', new TextEncoder().encode(text)]]),
          { tables: [{ file: 't.csv' }] },
          createRandom(1),
        );
        if (against(found)) tally.found++;
        else tally.missed.push(text);
      }
    say('table of counts with totals', tally);
  });
});
