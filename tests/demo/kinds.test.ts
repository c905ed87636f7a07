/**
 * What the study finds in the demo, against what was planted. The bounds are stated here beforehand; the
 * truth comes from truth.csv, never from our own results.
 */
import { beforeAll, describe, expect, it } from 'vitest';
import type { ResultTable, TableCell } from '../../src/analyses/contract.ts';
import { adjustedRand, contingency } from '../../src/numerics/grouping/agreement.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import { demoAnswer } from '../analyses/demo-answer.ts';
import { TRUE_ITEMS } from './truth.ts';

const results = new Map<string, AnalysisResult>();

beforeAll(() => {
  for (const id of ['groups', 'where']) results.set(id, demoAnswer(id));
}, 120_000);

const truth = new Map(TRUE_ITEMS.map((item) => [item.item, item]));
const records = (id: string, table: string): Record<string, TableCell>[] => {
  const found = results.get(id)?.tables[table] as ResultTable;
  return found.rows.map((row) => Object.fromEntries(found.columns.map((column, i) => [column.id, row[i]!])));
};

describe('grouping', () => {
  it('finds as many groups as kinds were planted, the two odd pieces aside', () => {
    expect(records('groups', 'groups').length).toBe(6);
  });

  it('recovers the planted kinds: adjusted Rand index above 0.9', () => {
    const grouped = records('groups', 'membership').filter(({ group }) => group !== 'none');
    expect(grouped.length).toBeGreaterThanOrEqual(255);
    const kinds = [...new Set(TRUE_ITEMS.map(({ kind }) => kind))];
    const planted = grouped.map(({ item }) => kinds.indexOf(truth.get(String(item))!.kind));
    const index = adjustedRand(
      contingency(
        planted,
        grouped.map(({ group }) => Number(group) - 1),
      ),
    );
    console.info(`adjusted Rand index of the groups and the planted kinds: ${String(index)}`);
    expect(index).toBeGreaterThan(0.9);
  });
});

describe('the find to place', () => {
  it('has only open twining among its nearest comparanda', () => {
    const nearest = records('where', 'neighbours').map(({ id }) => truth.get(String(id))!);
    expect(nearest.length).toBeGreaterThanOrEqual(8);
    expect(new Set(nearest.map(({ kind }) => kind))).toEqual(new Set(['open twining']));
  });

  it('has mostly comparanda of the Shelf tradition, as it was made', () => {
    const nearest = records('where', 'neighbours').map(({ id }) => truth.get(String(id))!);
    const shelf = nearest.filter(({ tradition }) => tradition === 'Shelf').length;
    expect(shelf / nearest.length).toBeGreaterThan(0.7);
  });

  it('is not told apart from the sites that made its kind, and is from those that did not', () => {
    const verdicts = new Map(
      records('where', 'typicality')
        .filter(({ attribute }) => attribute === 'Site')
        .map(({ label, at90 }) => [label, at90]),
    );
    for (const site of ['Quorrimel Cave', 'Ulvombre Terraces', 'Pellunar Wreck']) {
      expect(verdicts.get(site), site).not.toBe('excluded');
    }
    for (const site of ['Drommavel Landing', 'Tazzimbe Gallery', 'Ysketh Pans']) {
      expect(verdicts.get(site), site).toBe('excluded');
    }
  });

  it('is not called new: its kind is among the comparanda', () => {
    const site = records('where', 'novelty').find(({ attribute }) => attribute === 'Site')!;
    expect(site.p).toBeGreaterThan(0.1);
  });
});
