import { describe, expect, it } from 'vitest';
import { fileStem } from '../../src/app/files.ts';
import { EMPTY_WORKSPACE, withAnalysis } from '../../src/app/state/workspace.ts';
import {
  withColumnRule,
  withoutSource,
  withProfile,
  withSources,
} from '../../src/app/state/workspace-sources.ts';
import { sourceProfile } from '../../src/sources/profile/profile.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const text = (value: Uint8Array | undefined) => new TextDecoder().decode(value);

describe('the workspace', () => {
  it('finds a profile that lies beside its table, whichever comes first', () => {
    const together = withSources(
      EMPTY_WORKSPACE,
      new Map([
        ['a.csv', bytes('x')],
        ['a.profile.json', bytes('{}')],
      ]),
    );
    expect(together.study.sources).toEqual([{ file: 'a.csv', profile: 'a.profile.json' }]);
    const later = withSources(
      withSources(EMPTY_WORKSPACE, new Map([['a.csv', bytes('x')]])),
      new Map([['a.profile.json', bytes('{}')]]),
    );
    expect(later.study.sources).toEqual(together.study.sources);
  });

  it('replaces a table that is brought again and keeps its profile', () => {
    const first = withSources(EMPTY_WORKSPACE, new Map([['a.csv', bytes('old')]]));
    const read = withProfile(first, 'a.csv', sourceProfile.parse({ decimal: ',' }));
    const again = withSources(read, new Map([['a.csv', bytes('new')]]));
    expect(again.study.sources).toEqual([{ file: 'a.csv', profile: 'a.profile.json' }]);
    expect(text(again.files.get('a.csv'))).toBe('new');
    expect(JSON.parse(text(again.files.get('a.profile.json')))).toMatchObject({ decimal: ',' });
  });

  it('takes a table out together with its profile and leaves the former state as it was', () => {
    const before = withProfile(
      withSources(EMPTY_WORKSPACE, new Map([['a.csv', bytes('x')]])),
      'a.csv',
      sourceProfile.parse({}),
    );
    const after = withoutSource(before, 'a.csv');
    expect([...after.files.keys()]).toEqual([]);
    expect(before.files.size).toBe(2);
  });

  it('changes one rule of a profile and no other, and takes a key out when it is undefined', () => {
    const profile = sourceProfile.parse({
      columns: [
        { header: 'a', ignore: true },
        { header: ['b', 'B'], unit: 'cm' },
      ],
    });
    const changed = withColumnRule(profile, 'a', { attribute: 'rowSpacing', ignore: undefined });
    expect(changed.columns).toEqual([{ header: 'a', attribute: 'rowSpacing' }, profile.columns[1]]);
    expect(withColumnRule(profile, 'B', { unit: 'mm' }).columns[1]).toEqual({
      header: ['b', 'B'],
      unit: 'mm',
    });
    expect(withColumnRule(profile, 'c', { ignore: true }).columns).toHaveLength(3);
  });

  it('replaces the analysis of an id in its place', () => {
    const two = withAnalysis(withAnalysis(EMPTY_WORKSPACE, { id: 'a', kind: 'x' }), { id: 'b', kind: 'y' });
    expect(withAnalysis(two, { id: 'a', kind: 'z' }).study.analyses.map(({ kind }) => kind)).toEqual([
      'z',
      'y',
    ]);
  });

  it('makes file names of letters, figures and hyphens', () => {
    expect(fileStem('Fabrics of Çoast (a) / b')).toBe('fabrics-of-coast-a-b');
    expect(fileStem('???')).toBe('study');
  });
});
