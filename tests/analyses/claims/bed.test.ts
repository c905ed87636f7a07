import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import type { ClaimsFound } from '../../../src/analyses/claims/found.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { LONG } from '../../long.ts';
import { type BedTest, bed, report, STYLES, type Style } from './bed.ts';
import { check, type Row } from './claims.ts';
import { COUNT_LAYOUTS, SAMPLE_LAYOUTS } from './table-layouts.ts';

/**
 * Right figures, many ways of print: tests, samples and tables of counts that R computed of the open data sets
 * that it carries (tests/references/scripts/printed-bed.R), in eight styles and seventeen layouts. Nothing that is
 * right may be called impossible. Then one digit is altered.
 */

interface Tally {
  figures: number;
  alarms: string[];
  impossible: string[];
}

function count(tally: Tally, name: string, found: ClaimsFound): void {
  tally.figures += found.judged.length;
  for (const { figure, verdict, why } of found.judged) {
    const said = `${name}, ${figure.id} “${figure.printed}”: ${why}`;
    if (verdict === 'differs') tally.alarms.push(said);
    if (verdict === 'cannot be') tally.impossible.push(said);
  }
}

/** Every layout meets every style; in the long run each of them also every table, without it every fourth. */
function met<T>(tables: readonly T[], style: Style): readonly T[] {
  return LONG ? tables : tables.filter((_, i) => (i + STYLES.indexOf(style)) % 4 === 0);
}

function checkTable(text: string, step?: string): ClaimsFound {
  const files = new Map([['t.csv', new TextEncoder().encode(text)]]);
  return checkClaims(
    files,
    { tables: [{ file: 't.csv', ...(step === undefined ? {} : { step }) }] },
    createRandom(1),
  );
}

function rowsIn(style: Style, tests: readonly BedTest[] = bed.tests): Row[] {
  return tests.flatMap((test, i) => {
    const said = report(test, style);
    return said === null ? [] : [{ ...said.row, id: `${test.kind} ${i}` }];
  });
}

describe('right figures in print', () => {
  const reports: Tally = { figures: 0, alarms: [], impossible: [] };
  const tables: Tally = { figures: 0, alarms: [], impossible: [] };

  it.each(STYLES)('reports of tests, $name', (style) => {
    const tests = bed.tests.filter((_, i) => i % 3 === STYLES.indexOf(style) % 3);
    const found = check(rowsIn(style, tests));
    expect(found.unread).toEqual([]);
    count(reports, style.name, found);
  });

  it.each(Object.keys(COUNT_LAYOUTS))('tables of counts: %s', (layout) => {
    for (const style of STYLES)
      for (const table of met(bed.counts, style))
        count(tables, `${layout}, ${style.name}`, checkTable(COUNT_LAYOUTS[layout](table, style)));
  });

  it.each(Object.keys(SAMPLE_LAYOUTS))('tables of means: %s', (layout) => {
    for (const style of STYLES)
      for (const table of met(bed.samples, style))
        count(
          tables,
          `${layout}, ${style.name}`,
          checkTable(SAMPLE_LAYOUTS[layout](table, style), String(table.step)),
        );
  });

  it('are called impossible never, and differing in at most one of a thousand', () => {
    expect([...reports.impossible, ...tables.impossible]).toEqual([]);
    expect(reports.figures).toBeGreaterThan(8000);
    expect(tables.figures).toBeGreaterThan(LONG ? 50_000 : 12_000);
    expect(reports.alarms.length, reports.alarms.slice(0, 5).join('\n')).toBeLessThanOrEqual(
      reports.figures / 1000,
    );
    expect(tables.alarms.length, tables.alarms.slice(0, 5).join('\n')).toBeLessThanOrEqual(
      tables.figures / 1000,
    );
    process.stdout.write(
      `right figures: ${reports.figures} of reports, ${tables.figures} of tables; called differing: ${reports.alarms.length} and ${tables.alarms.length}\n`,
    );
  });
});

const against = (found: ClaimsFound) => found.counts.differs + found.counts['cannot be'] > 0;

/** The text with one digit of one of its numbers altered; labels and heads stay. */
function alteredDigits(text: string, random: ReturnType<typeof createRandom>, times: number): string[] {
  const lines = text.split('\n');
  const from = lines.findIndex(
    (line) =>
      /^(?!Table)[^,]*[^\d,]*.*\d/.test(line) &&
      !/n,%/.test(line) &&
      line
        .split(/,| {2,}/)
        .slice(1)
        .every((cell) => cell === '' || /\d/.test(cell)),
  );
  const places = [...text.matchAll(/\d/g)]
    .map(({ index }) => index)
    .filter((at) => {
      const before = text.slice(0, at);
      const line = before.split('\n').length - 1;
      const first = lines[line].search(/,| {2,}/);
      return (
        line >= from && from >= 0 && at - before.lastIndexOf('\n') - 1 > first && !/^Note/.test(lines[line])
      );
    });
  return Array.from({ length: times }, () => {
    const at = places[Math.floor(random.next() * places.length)];
    const digit = (Number(text[at]) + 1 + Math.floor(random.next() * 9)) % 10;
    return text.slice(0, at) + digit + text.slice(at + 1);
  });
}

describe('one digit altered', () => {
  // Percentages over an n hide most alterations: k of n is on a grid finer than the print.
  const telling = Object.keys(COUNT_LAYOUTS).filter(
    (name) =>
      name !== 'per cent over an n row' &&
      name !== 'set in blanks with an area' &&
      name !== 'parted by single blanks',
  );

  it('in tables of counts is found out in 95 of a hundred', () => {
    const random = createRandom(7);
    let [all, found] = [0, 0];
    const missed: string[] = [];
    for (const layout of telling)
      for (const [i, table] of bed.counts.entries()) {
        const text = COUNT_LAYOUTS[layout](table, STYLES[i % 2 === 0 ? 0 : 4]);
        for (const altered of alteredDigits(text, random, 4)) {
          all++;
          if (against(checkTable(altered))) found++;
          else missed.push(`${layout}: ${altered}`);
        }
      }
    process.stdout.write(
      `altered digits in tables of counts: ${all}, found out: ${((100 * found) / all).toFixed(1)} %\n`,
    );
    expect(found / all, missed.slice(0, 3).join('\n')).toBeGreaterThan(0.95);
  });

  it('in p, two digits off or more, is found out in 95 of a hundred', () => {
    let [all, found] = [0, 0];
    const style = STYLES[4];
    for (const test of bed.tests.filter(({ kind }) =>
      ['student', 'welch', 'anova', 'pearson', 'u', 'kruskal'].includes(kind),
    )) {
      const said = report(test, style);
      const match = said === null ? null : /p = 0\.(\d)(\d)(\d)(\d)/.exec(said.text);
      if (said === null || match === null) continue;
      const first = (Number(match[1]) + 3) % 10;
      const text = said.text.replace(match[0], `p = 0.${first}${match[2]}${match[3]}${match[4]}`);
      all++;
      if (against(check([{ ...said.row, id: 'a', printed: text }]))) found++;
    }
    process.stdout.write(`altered p: ${all}, found out: ${((100 * found) / all).toFixed(1)} %\n`);
    expect(all).toBeGreaterThan(100);
    expect(found / all).toBeGreaterThan(0.95);
  });
});
