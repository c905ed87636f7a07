import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { thrum } from '../cli/thrum.ts';

/**
 * What the command line prints and writes of a table of which two rows are withheld and one is shown without its
 * place: a cell that was not understood holds the name of the place as well.
 */
const SECRETS = ['Hollin', 'North chamber', 'HC-', 'Tuppen'];
const ROWS = [
  'Cat. no.,Site,Structure,Row spacing (mm),Fibre,Context,Recorder,Restriction',
  ...Array.from(
    { length: 8 },
    (_, i) => `OP-${i},Grebe Holm,${i % 2 === 0 ? 'twining' : 'tabby'},${20 + i},flax,Hall,Orrin,open`,
  ),
  'HC-1,Hollin Cave,twining,c. 24,reed of Hollin Cave,North chamber,Tuppen,withheld',
  'HC-2,Hollin Cave,twinning from Hollin,25,nettle,North chamber,Tuppen,withheld',
  'HC-3,Hollin Cave,twining,26 (Hollin Cave),nettle of Hollin,North chamber,Tuppen,place withheld',
];
const STUDY = {
  title: 'One cave that is not named',
  witness: { is: 'row' },
  sources: [{ file: 'finds.csv' }],
  analyses: [
    { id: 'counts', kind: 'summary', of: ['rowSpacing'], by: ['site'] },
    { id: 'table', kind: 'crosstab', rows: 'site', columns: 'fibre' },
    { id: 'where', kind: 'placement', find: { rowSpacing: '25', structure: 'twining' }, nearest: 9 },
  ],
};

let folder = '';
const leaks = (text: string) => SECRETS.filter((secret) => text.includes(secret));

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'thrum-restricted-'));
  writeFileSync(join(folder, 'finds.csv'), `${ROWS.join('\n')}\n`);
  writeFileSync(join(folder, 'study.json'), JSON.stringify(STUDY));
});

describe('what is withheld stands in nothing that the command line prints or writes', () => {
  it.each([[['--json']], [[]]])('read %j', async (options) => {
    const { out, err, status } = await thrum('read', join(folder, 'finds.csv'), ...options);
    expect(status).toBe(0);
    expect(out).toContain('Withheld by the source.');
    expect(leaks(out + err)).toEqual([]);
  });

  it('the ledger, the profile and the study that a reading saves', async () => {
    const file = (name: string) => join(folder, name);
    await thrum(
      'read',
      file('finds.csv'),
      '--ledger',
      file('ledger.csv'),
      '--save-profile',
      file('saved.profile.json'),
      '--save-study',
      file('begun.json'),
    );
    for (const name of ['ledger.csv', 'saved.profile.json', 'begun.json'])
      expect(leaks(readFileSync(file(name), 'utf8')), name).toEqual([]);
  });

  it('every file of a run, and what it prints', async () => {
    const into = join(folder, 'out');
    const { out, err } = await thrum('run', join(folder, 'study.json'), '--out', into);
    expect(leaks(out + err)).toEqual([]);
    const written = readdirSync(into, { recursive: true, withFileTypes: true }).filter((one) => one.isFile());
    expect(written.length).toBeGreaterThan(3);
    // A copy of the source itself is the source's own matter, and none is written.
    for (const { parentPath, name } of written)
      expect(leaks(readFileSync(join(parentPath, name), 'latin1')), name).toEqual([]);
  });
});
