import { describe, expect, it } from 'vitest';
import { chronologyOptions } from '../../src/analyses/chronology/options.ts';
import { groupingOptions } from '../../src/analyses/grouping/options.ts';
import { ordinationOptions } from '../../src/analyses/ordination/options.ts';
import { ANALYSES } from '../../src/analyses/register.ts';
import {
  allowedNumber,
  boundsInWords,
  leavesOut,
  settingsOf,
  withOptions,
} from '../../src/app/parts/asking/settings.ts';
import {
  apartIn,
  axesOf,
  groupsOf,
  withAlike,
  withAxes,
  withGroups,
} from '../../src/app/screens/kinship/kin-axes.ts';
import { EMPTY_WORKSPACE, withStudy } from '../../src/app/state/workspace.ts';

const only = (name: string, schema = groupingOptions as never) => {
  const [setting] = settingsOf(schema, [name]);
  if (setting === undefined) throw new Error(`no setting ${name}`);
  return setting;
};

describe('settings of an analysis, from its schema', () => {
  it('part the text of a choice among its values, whatever semicolons a value has of its own', () => {
    const method = only('method', ordinationOptions as never);
    if (method.kind !== 'choice') throw new Error('the method is no choice');
    expect(method.values.map(({ id }) => id)).toEqual(['pcoa', 'pca', 'mca', 'mixed', 'ca']);
    expect(method.values.map(({ note }) => note).slice(0, 2)).toEqual([
      'principal coordinates of the block dissimilarity; takes every kind of attribute, and gaps',
      'principal components of numbers',
    ]);
    expect(method.description).toBe('');
    expect(only('correction', ordinationOptions as never).description).toContain('Euclidean');
  });

  it('keep defaults and bounds, and say them', () => {
    const overlap = only('minimumOverlap');
    const fuzziness = only('fuzziness');
    const starts = only('starts');
    if (overlap.kind !== 'number' || fuzziness.kind !== 'number' || starts.kind !== 'number')
      throw new Error('not numbers');
    expect([overlap.usual, fuzziness.usual, starts.usual]).toEqual([0, 2, 100]);
    expect([' 0,5', '1', '1.1', '-1', '', 'x'].map((text) => allowedNumber(overlap, text))).toEqual([
      0.5,
      1,
      null,
      null,
      null,
      null,
    ]);
    expect(['1', '1.01'].map((text) => allowedNumber(fuzziness, text))).toEqual([null, 1.01]);
    expect(['2', '2.5'].map((text) => allowedNumber(starts, text))).toEqual([2, null]);
    expect(boundsInWords(fuzziness)).toBe('a number above 1 up to 10');
    expect(boundsInWords(starts)).toBe('a whole number from 1 to 1000');
    const smallest = only('smallestGroup');
    expect(smallest.kind === 'number' && boundsInWords(smallest)).toBe('a whole number from 2 on');
  });

  it('leave a number empty that need not be given, rather than ask for one that is refused', () => {
    const slice = only('slice', chronologyOptions as never);
    if (slice.kind !== 'number') throw new Error('not a number');
    expect(slice.usual).toBeNull();
    expect([leavesOut(slice, ' '), leavesOut(slice, '0')]).toEqual([true, false]);
    expect(allowedNumber(slice, '0')).toBeNull();
    expect(leavesOut(only('starts') as typeof slice, '')).toBe(false);
  });

  it('every default that a screen shows is one that it takes', () => {
    for (const { kind, options } of ANALYSES)
      for (const setting of settingsOf(options, Object.keys(options.shape)))
        if (setting.kind === 'number' && setting.usual !== null)
          expect(allowedNumber(setting, String(setting.usual)), `${kind} ${setting.name}`).toBe(
            setting.usual,
          );
  });

  it('leave out what no single field can ask for', () => {
    expect(
      settingsOf(groupingOptions as never, ['k', 'weights', 'variants']).map(({ name }) => name),
    ).toEqual(['variants']);
  });

  it('take an option away that is undefined', () => {
    const before = { id: 'a', kind: 'grouping', compareWith: 'type' };
    expect(withOptions(before, { compareWith: undefined, k: 3 })).toEqual({
      id: 'a',
      kind: 'grouping',
      k: 3,
    });
  });
});

describe('the map of kin', () => {
  const attribute = (id: string, scale: string) =>
    ({ definition: { id, scale }, filled: 1, records: 1, recorded: 1, levels: [] }) as never;
  const attributes = [attribute('density1', 'ratio'), attribute('structure', 'nominal')];
  const start = withStudy(EMPTY_WORKSPACE, {
    analyses: [
      { id: 'table', kind: 'ordination', method: 'ca', rows: 'site', columns: 'structure' },
      { id: 'groups', kind: 'grouping', of: ['density1', 'structure'], mode: 'plain' },
    ],
  });
  const axes = (options: Readonly<Record<string, unknown>>) =>
    withAxes(start, options, attributes).study.analyses.find(({ id }) => id === 'axes');

  it('compares as the groups do, and leaves an analysis of counts alone', () => {
    expect(axes({})).toEqual({
      id: 'axes',
      kind: 'ordination',
      of: ['density1', 'structure'],
      mode: 'plain',
    });
    expect(withAxes(start, {}, attributes).study.analyses[0]).toEqual(start.study.analyses[0]);
  });

  it('asks principal components for numbers alone, and correspondence for kinds', () => {
    expect(axes({ method: 'pca' })?.of).toEqual(['density1']);
    expect(axes({ method: 'mca' })?.of).toEqual(['structure']);
    expect(axes({ method: 'mixed' })?.of).toEqual(['density1', 'structure']);
  });

  it('takes kinds again that principal components could not take, once another map is asked for', () => {
    const numbers = withAxes(start, { method: 'pca' }, attributes);
    const back = withAxes(numbers, { method: 'pcoa' }, attributes).study.analyses;
    expect(axesOf(back, attributes).of).toEqual(['density1', 'structure']);
  });

  describe('that the study asks for otherwise than its groups', () => {
    const own = { id: 'map', kind: 'ordination', of: ['density1'], weights: { spacing: 2 } };
    const asked = withStudy(start, { analyses: [...start.study.analyses, own] });
    const mapIn = ({ study }: typeof asked) => axesOf(study.analyses, attributes);
    const groupsIn = ({ study }: typeof asked) => groupsOf(study.analyses);

    it('is drawn as the study asks, whatever is changed of groups or map', () => {
      expect(mapIn(asked)).toEqual(own);
      expect(apartIn(mapIn(asked), groupsIn(asked), attributes)).toEqual([
        'Attributes',
        'Weights of the blocks',
        'Dissimilarity',
      ]);
      const regrouped = withGroups(asked, { weights: { structure: 3 } }, attributes);
      expect(mapIn(regrouped)).toEqual(own);
      expect(groupsIn(regrouped).weights).toEqual({ structure: 3 });
      expect(mapIn(withAxes(asked, { axes: 2 }, attributes))).toEqual({ ...own, axes: 2 });
    });

    it('follows the groups once that is wished, and then stays with them', () => {
      const alike = withAlike(asked, attributes);
      expect(mapIn(alike)).toEqual({
        id: 'map',
        kind: 'ordination',
        of: ['density1', 'structure'],
        mode: 'plain',
      });
      expect(apartIn(mapIn(alike), groupsIn(alike), attributes)).toEqual([]);
      const regrouped = withGroups(alike, { weights: { structure: 3 } }, attributes);
      expect(mapIn(regrouped).weights).toEqual({ structure: 3 });
    });
  });

  it('is alike where defaults, order and weights of 1 are all that differs', () => {
    const groups = { id: 'groups', kind: 'grouping', of: ['a', 'b'], weights: { structure: 1, spacing: 1 } };
    const axes = { id: 'axes', kind: 'ordination', of: ['b', 'a'], mode: 'blocks' };
    expect(apartIn(axes, groups, [])).toEqual([]);
    expect(apartIn({ ...axes, minimumOverlap: 0.5 }, groups, [])).toEqual(['Least overlap']);
    expect(apartIn({ ...axes, skewed: 'plain' }, groups, [])).toEqual(['Skewed attributes']);
  });

  it('says what the groups compare where the study asks for none', () => {
    const axes = { id: 'map', kind: 'ordination', of: ['density1'], weights: { spacing: 2 } };
    expect(groupsOf([axes])).toEqual({ ...axes, id: 'groups', kind: 'grouping' });
  });
});
