import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { startStudy } from '../../src/study/start-study.ts';
import { read } from '../sources/support.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const begun = (text: string, profile?: Parameters<typeof read>[1]) =>
  startStudy(
    { title: 't', sources: [{ file: 'finds.csv' }] },
    read(text, profile ?? {}, { register: defaultRegister() }).table,
  );

/** Invented finds of as many places as are named. */
const finds = (sites: readonly string[]) =>
  `Find no.,Site,Structure,Row spacing (mm)\n${sites
    .flatMap((site, place) =>
      Array.from(
        { length: 12 },
        (_, at) =>
          `${site[0]}${place}${at},${site},${at % 12 < 3 + 3 * place ? 'open twining' : 'tabby'},${6 + place + (at % 4)}`,
      ),
    )
    .join('\n')}\n`;

describe('a study to begin with', () => {
  it('asks from three places on where the first of them stands, and runs', () => {
    const text = finds(['Harrow', 'Kelder', 'Ness']);
    const study = begun(text);
    expect(study.analyses?.map(({ id }) => id)).toEqual([
      'numbers',
      'kinds',
      'differ',
      'table',
      'groups',
      'alike',
      'standing',
    ]);
    expect(study.analyses?.find(({ id }) => id === 'standing')).toMatchObject({
      site: 'Harrow',
      of: 'structure',
    });
    const quick = study.analyses?.filter(({ id }) => id === 'standing') ?? [];
    const run = runStudy(
      checkStudy({ ...study, analyses: quick.map((one) => ({ ...one, resamples: 199 })) }, 'study.json'),
      new Map([['finds.csv', bytes(text)]]),
    );
    expect(run.analyses.standing?.why).toBeUndefined();
  });

  it('asks of two places no standing, and counts a name made up of both as no third', () => {
    const ids = (text: string) => begun(text).analyses?.map(({ id }) => id);
    expect(ids(finds(['Harrow', 'Kelder']))).not.toContain('standing');
    expect(ids(finds(['Harrow', 'Kelder', 'Harrow / Kelder']))).not.toContain('standing');
  });

  it('calls no two questions by one title', () => {
    const titles = begun(finds(['Harrow', 'Kelder', 'Ness'])).analyses?.map(
      ({ title, kind }) => title ?? kind,
    );
    expect(new Set(titles).size).toBe(titles?.length);
  });

  it('asks of a table of counts no groups of records, since its rows are none', () => {
    const text =
      'Site,tabby,twill,open twining\nHarrow,10,4,2\nKelder,6,8,1\nNess,3,1,9\nHolm,5,5,5\nVarn,2,7,8\n';
    const study = begun(text, { layout: { counts: { attribute: 'structure', place: 'site' } } });
    const ids = study.analyses?.map(({ id }) => id);
    expect(ids).toContain('standing');
    expect(ids).not.toContain('groups');
  });
});
