import { describe, expect, it } from 'vitest';
import type { JudgedFigure } from '../../../src/analyses/claims/found.ts';
import { bed, report, STYLES } from './bed.ts';
import { check, type Row } from './claims.ts';
import { COUNT_LAYOUTS, SAMPLE_LAYOUTS } from './table-layouts.ts';

/**
 * What is said for and against printed figures, kept to be read: of each kind of test once as it was computed and once
 * with a digit altered, and of one table of counts and of means the same. That right figures pass and altered ones do not
 * is held by the beds; this holds the reasons that are given.
 */

const STYLE = STYLES[1];

function altered(text: string): string {
  const at = /[=<>≈] *[−-]?\d*\.?\d/.exec(text);
  if (at === null) return text;
  const place = at.index + at[0].length - 1;
  return `${text.slice(0, place)}${(Number(text[place]) + 4) % 10}${text.slice(place + 1)}`;
}

function lines({ figure, says, why, explained, resolve, checks }: JudgedFigure): string[] {
  return [
    `“${figure.printed}” (${figure.quantity}): ${says}`,
    ...[why, explained, resolve].filter((text) => text !== '').map((text) => `  ${text}`),
    ...checks.map(
      ({ name, from, outcome, rounded, under, coarse }) =>
        `  - ${name} [${[from, outcome, rounded, under, coarse === true ? 'coarse' : undefined].filter((one) => one !== undefined).join(', ')}]`,
    ),
  ];
}

const judgedLines = (rows: readonly Row[], tables: Record<string, string> = {}) =>
  check(rows, tables).judged.flatMap(lines);

describe('the reasons given', () => {
  const kinds = [...new Set(bed.tests.map(({ kind }) => kind))];

  it.each(kinds)('of %s, right and altered', async (kind) => {
    const said = bed.tests.filter((test) => test.kind === kind).flatMap((test) => report(test, STYLE) ?? []);
    const [first] = said;
    if (first === undefined) return expect(said).toEqual([]);
    const right = judgedLines([{ ...first.row, id: 'a' }]);
    const wrong = judgedLines([{ ...first.row, id: 'a', printed: altered(first.text) }]);
    expect(right.join('\n')).not.toMatch(/cannot be(?! checked)/);
    await expect(`${[...right, '', ...wrong].join('\n')}\n`).toMatchFileSnapshot(
      `./snapshots/reasons/${kind.replace(/\W+/g, '-')}.txt`,
    );
  });

  it.each([
    ['counts', Object.values(COUNT_LAYOUTS)[0](bed.counts[0], STYLE)],
    ['means', Object.values(SAMPLE_LAYOUTS)[0](bed.samples[0], STYLE)],
  ])('of a table of %s, right and altered', async (kind, table) => {
    const last = table.trimEnd().split('\n').at(-1) ?? '';
    const wrong = table.replace(
      last,
      last.replace(/\d(?=\D*$)/, (digit) => String((Number(digit) + 4) % 10)),
    );
    expect(wrong).not.toBe(table);
    const kept = [...judgedLines([], { 't.csv': table }), '', ...judgedLines([], { 't.csv': wrong })];
    await expect(`${kept.join('\n')}\n`).toMatchFileSnapshot(`./snapshots/reasons/table-${kind}.txt`);
  });
});
