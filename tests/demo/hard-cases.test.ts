import { describe, expect, it } from 'vitest';
import { CERTAINTIES } from '../../src/cells/reading.ts';
import { termAt } from '../../src/fragments/accessors.ts';
import { isMissing } from '../../src/fragments/missing.ts';
import { wellAttestedUse } from '../../src/fragments/use-evidence.ts';
import { dataPackage } from '../../src/report/data-package.ts';
import { renderReport } from '../../src/report/html.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { readinessOf } from '../../src/study/readiness/readiness.ts';
import { serializeResults } from '../../src/study/results/json.ts';
import { analyse } from '../../src/study/run-study.ts';
import { demoBytes, demoText } from './truth.ts';

const study = checkStudy(JSON.parse(demoText('hard-cases-study.json')), 'hard-cases-study.json');
const files = new Map([['varnath-hard-cases.csv', demoBytes('varnath-hard-cases.csv')]]);
const prepared = prepareStudy(study, files);
const results = analyse(prepared, files);
const { all } = prepared;

const rowsWhere = (id: string, term: string | null) => {
  const column = all.columns.get(id);
  return column?.kind === 'term'
    ? all.id.map((_, row) => row).filter((row) => termAt(column, row) === term)
    : [];
};
const known = (id: string, rows: readonly number[]) => {
  const column = all.columns.get(id);
  return column === undefined ? 0 : rows.filter((row) => !isMissing(column, row)).length;
};

// What was written by hand into datasets/scripts/demo/hard-cases.ts.
describe('the hard cases of the invented coast are read as they were meant', () => {
  it('seventeen were written; one is withheld and one shown without its place', () => {
    expect(prepared.restriction).toEqual({ withheld: 1, placeWithheld: 1 });
    expect(all.rows).toBe(16);
    const doors = [
      serializeResults(results),
      renderReport({ prepared, results, parts: {} }),
      ...[...dataPackage(prepared, results)].map(([, text]) => text),
    ];
    for (const text of doors) expect(text).not.toMatch(/Marram|VS-116|VS-117|VS-14|VS-15/);
  });

  it('a repp that hides its warp has a count of it only where a tear shows it', () => {
    const repps = rowsWhere('face', 'weftFaced');
    expect(repps).toHaveLength(4);
    expect([known('density1', repps), known('density2', repps)]).toEqual([1, 3]);
  });

  it('rows that touch are a class, not a number; one close twining has both', () => {
    const close = rowsWhere('spacingClass', 'close');
    expect(close).toHaveLength(4);
    const spacing = all.columns.get('rowSpacing');
    expect(close.filter((row) => spacing?.kind === 'numeric' && spacing.low[row] > 0)).toHaveLength(1);
  });

  it('charred, then kept wet, is one preservation in any order of the words', () => {
    expect(rowsWhere('preservation', 'charredWaterlogged')).toHaveLength(3);
  });

  it('a repair is of either time', () => {
    expect(rowsWhere('repair', 'present')).toHaveLength(2);
    expect([rowsWhere('repairTime', 'inUse').length, rowsWhere('repairTime', 'afterFinding').length]).toEqual(
      [1, 1],
    );
  });

  it('uses count only where the piece shows them: two of three', () => {
    const attested = wellAttestedUse(all);
    const used = all.id.map((_, row) => row).filter((row) => known('recordedUse', [row]) === 1);
    expect(used).toHaveLength(3);
    expect(used.filter(attested)).toHaveLength(2);
  });

  it('mixtures within a system and between two', () => {
    expect(rowsWhere('fibre', 'silk+wool')).toHaveLength(1);
    expect(rowsWhere('fibre', 'metalThread+silk+wool')).toHaveLength(1);
    expect(rowsWhere('fibre2', 'wool')).toHaveLength(1);
    expect(results.analyses.made!.tables.mixtures?.rows.length).toBeGreaterThan(0);
  });

  it('a fibre is no surer than its method: flax by protein is indeterminate', () => {
    const fibre = all.columns.get('fibre');
    const method = rowsWhere('fibreMethod', 'protein').filter((row) =>
      rowsWhere('fibre', 'flax').includes(row),
    );
    expect(method.map((row) => fibre?.kind === 'term' && CERTAINTIES[fibre.certainty[row]!])).toEqual([
      'indeterminate',
    ]);
    expect(readinessOf(prepared).find(({ topic }) => topic === 'identification')?.state).toBe('mind');
  });

  it('sprang beside linking is cautioned about', () => {
    expect(results.study.cautions.join(' ')).toContain('Linking and sprang (1 and 1)');
  });

  it('pieces too small to count have no counts', () => {
    const length = all.columns.get('length');
    const small = all.id
      .map((_, row) => row)
      .filter((row) => length?.kind === 'numeric' && length.high[row] < 10);
    expect(small).toHaveLength(2);
    expect(known('density1', small) + known('density2', small)).toBe(0);
  });
});
