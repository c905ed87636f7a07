import { describe, expect, it } from 'vitest';
import { createEngine } from '../../src/app/engine/engine.ts';
import type { StudyView } from '../../src/app/engine/views/study.ts';
import { EMPTY_WORKSPACE } from '../../src/app/state/workspace.ts';
import { withProfile, withSources } from '../../src/app/state/workspace-sources.ts';
import { sourceProfile } from '../../src/sources/profile/profile.ts';

/** Invented tables of two colleagues and a list of places; what is expected follows from their texts. */
const bytes = (text: string) => new TextEncoder().encode(text);
const FILES = new Map([
  [
    'north.csv',
    bytes('Find no.,Site,Weave,Warp/cm\n1,Holm,tabby,12\n2,Holm,twill,16\n3,Pell,tabby,9\n4,Vell,tabby,8\n'),
  ],
  [
    'sued.csv',
    bytes('Fund-Nr.;Fundort;Bindung;Kette/cm\nA;Ottmere;Köper;14\nB;Ottmere;Leinwandbindung;10\n'),
  ],
  ['places.csv', bytes('Site,Region\nHolm,High Shelf\nPell,Low Shelf\nVell,Low Shelf\n')],
]);

async function opened(workspace: typeof EMPTY_WORKSPACE): Promise<StudyView> {
  const engine = createEngine();
  await engine.keepFiles(workspace.files, []);
  return engine.open(workspace.study);
}

describe('several tables brought at once', () => {
  const brought = withSources(EMPTY_WORKSPACE, FILES);

  it('stand side by side by what their columns mean, whatever their language', async () => {
    const { aligned } = await opened(brought);
    const headers = Object.fromEntries(aligned.map((column) => [column.id, column.headers]));
    expect(headers.structure).toEqual(['Weave', 'Bindung', '']);
    expect(headers.density1).toEqual(['Warp/cm', 'Kette/cm', '']);
    expect(headers.site).toEqual(['Site', 'Fundort', 'Site']);
  });

  it('have a join proposed by key with what is matched, which an answer makes', async () => {
    const { joins } = await opened(brought);
    expect(joins).toEqual([
      { finds: 'north.csv', describing: 'places.csv', by: 'site', label: 'Site', keys: 3, matched: 3 },
    ]);
    const profile = sourceProfile.parse({ role: 'assemblages', joinBy: ['site'] });
    const view = await opened(withProfile(brought, 'places.csv', profile));
    expect(view.fragments).toBe(6);
    expect(view.attributes.find(({ definition }) => definition.id === 'region')?.recorded).toBe(4);
  });

  it('say nothing of it where there is one table', async () => {
    const one = withSources(EMPTY_WORKSPACE, new Map([...FILES].slice(0, 1)));
    expect(await opened(one)).toMatchObject({ aligned: [], joins: [] });
  });
});
