import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder, ROOT, thrum } from './thrum.ts';

const folder = freshFolder();
const DEMO = join(ROOT, 'datasets/demo');

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('thrum check', () => {
  it('prints a template that it can read itself', async () => {
    const { status, out } = await thrum('check', '--template');
    expect(status).toBe(0);
    const { status: read, err } = await thrum('check', file('template.csv', out));
    expect([read, err]).toEqual([0, '']);
  });

  it('leaves with 1 when a figure cannot be, and with 0 when it can', async () => {
    const claims = (mean: string) => `id,quantity,set,step,printed\na,n,s,,28\nb,mean,s,1,${mean}\n`;
    expect((await thrum('check', file('can.csv', claims('5.18')))).status).toBe(0);
    const { status, out } = await thrum('check', file('cannot.csv', claims('5.19')));
    expect(status).toBe(1);
    expect(out).toContain('145/28 = 5.1786');
    expect(out).toContain('To settle it:');
  });

  it.each([
    ['missing.csv', undefined, 'there is no such file'],
    ['no-printed.csv', 'id,quantity\na,mean\n', 'the column "printed" is missing'],
    ['quantity.csv', 'quantity,printed\nmode,3\n', '"mode" is not known here'],
    ['text.csv', 'quantity,printed\nmean,about the same\n', 'cannot be read as a printed mean'],
    ['select.csv', 'quantity,select,printed\nmean,rowSpacing > 2,3.1\n', 'use >= or <='],
    ['twice.csv', 'id,quantity,printed\na,mean,3\na,mean,4\n', 'stands in row 2 already'],
  ])('refuses %s in one sentence, with 2', async (name, text, said) => {
    const path = text === undefined ? join(folder, name) : file(name, text);
    const { status, err } = await thrum('check', path);
    expect(status).toBe(2);
    expect(err).toContain(said);
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('holds the demo paper against its study; the page stands alone and escapes what it quotes', async () => {
    const [html, markdown] = [join(folder, 'page.html'), join(folder, 'letter.md')];
    const { status, out } = await thrum(
      'check',
      join(DEMO, 'claims.csv'),
      '--study',
      join(DEMO, 'study.json'),
      '--json',
      '--html',
      html,
      '--markdown',
      markdown,
    );
    expect(status).toBe(1);
    const { counts } = JSON.parse(out) as { counts: Record<string, number> };
    expect([counts['cannot be'], counts.differs]).toEqual([1, 8]);
    const page = readFileSync(html, 'utf8');
    expect(page).not.toMatch(/https?:\/\/|<script|<link|src=/);
    expect(page.match(/<details class="claim"/g)).toHaveLength(43);
    expect(readFileSync(markdown, 'utf8')).toContain('fragments counted instead of items');
    const evil = file('evil.csv', 'id,place,quantity,printed\na,<img src=x onerror=alert(1)>,mean,3\n');
    await thrum('check', evil, '--html', html);
    expect(readFileSync(html, 'utf8')).not.toContain('<img');
  });

  it('takes whole printed tables, and finds a total that is off', async () => {
    const table = file('sites.csv', 'site,wool,flax,total\nA,12,7,19\nB,5,13,19\ntotal,17,21,38\n');
    const claims = file('c.csv', 'id,quantity,set,test,printed\nx,statistic,sites,chi-squared,5.5\n');
    const { status, out } = await thrum('check', claims, '--table', table);
    expect(status).toBe(1);
    expect(out).toContain('14 instead of 13');
  });

  it('leaves with 1 for what differs when asked to be strict, and heads the letter with the paper', async () => {
    const claims = file(
      'differs.csv',
      'id,place,quantity,printed\na,p. 4,statistic,"t(18) = 2.31, p = .05"\n',
    );
    expect((await thrum('check', claims)).status).toBe(0);
    const letter = file('strict.md', '');
    const strict = await thrum('check', claims, '--strict', '--paper', 'Harrow, Ropes', '--markdown', letter);
    expect(strict.status).toBe(1);
    const text = readFileSync(letter, 'utf8');
    expect(text).toContain('Paper: Harrow, Ropes');
    expect(text).toContain('**p. 4, “t(18) = 2.31, p = .05”** (p): differs.');
    expect(text).not.toMatch(/\(a\)|\ba:/);
    expect(text.indexOf('What differs')).toBeLessThan(text.indexOf('What would settle it'));
  });

  it('tells all faults of a claims file at once', async () => {
    const claims = file('faults.csv', 'quantity,printed\nmode,3\nmean,3.2\nmean,about the same\n');
    const { status, err } = await thrum('check', claims);
    expect(status).toBe(2);
    expect(err).toContain('2 faults: row 2');
    expect(err).toContain('row 4, column "printed"');
    expect(err.trimEnd().split('\n')).toHaveLength(1);
  });

  it('checks printed tables alone, and names what cannot be checked by what it lacks', async () => {
    const table = file('means.csv', 'group,n,mean,sd\nA,17,14.6,3.2\nB,22,17.3,3.9\n');
    const letter = file('letter.md', '');
    const { status, out } = await thrum('check', '--table', table, '--markdown', letter);
    expect(status).toBe(0);
    const group = 'Print the step of the readings beside it, or give the table of readings.';
    expect(out).toContain(`${group.charAt(0).toLowerCase()}${group.slice(1, 20)}`);
    // Summed up in a paragraph, once.
    const text = readFileSync(letter, 'utf8');
    expect(text).toContain('could not be checked, which says nothing for or against them');
    expect(text.split('rint the step of the readings beside it')).toHaveLength(2);
    expect(out).toContain('means was read as: n = n; mean = mean; sd = sd.');
    const { status: refused, err } = await thrum('check');
    expect([refused, err]).toEqual([2, expect.stringContaining('no claims file and no printed table')]);
  });

  it('holds a printed table alone against the records of a study', async () => {
    // Counted and averaged by R 4.2.2 in datasets/open/penguins.csv: aggregate(cbind(n, mean, sd) of body mass by species).
    const table = (mean: string) =>
      file(
        'mass.csv',
        `Table 1. Body mass by species\nSpecies,n,Mean (SD)\nAdelie,151,3700.7 (458.6)\nChinstrap,68,3733.1 (384.3)\nGentoo,123,${mean} (504.1)\n`,
      );
    const study = join(ROOT, 'datasets/open/penguins-study.json');
    const judged = async (mean: string) => {
      const { status, out } = await thrum(
        'check',
        '--table',
        table(mean),
        '--study',
        study,
        '--json',
        '--strict',
      );
      const figures = JSON.parse(out).figures as { verdict: string; why: string }[];
      return { status, figures };
    };
    const right = await judged('5076.0');
    expect(right.figures.map(({ verdict }) => verdict)).toEqual(Array(9).fill('agrees'));
    expect(right.figures.every(({ why }) => why.startsWith('From the data'))).toBe(true);
    expect(right.status).toBe(0);
    const wrong = await judged('5067.0');
    expect(wrong.figures.filter(({ verdict }) => verdict === 'differs')).toHaveLength(1);
    expect(wrong.status).toBe(1);
  });
});
