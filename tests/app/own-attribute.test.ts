import { describe, expect, it } from 'vitest';
import { draftOf, NEW_DRAFT, withOwn, withoutOwn } from '../../src/app/screens/sources/own-attribute.ts';
import type { StudyDocument } from '../../src/app/state/workspace.ts';
import { isWithin } from '../../src/attributes/tree.ts';
import { checkStudy, studyRegister } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';

const EMPTY: StudyDocument = {
  title: 'Own',
  seed: 1,
  unit: 'item',
  sources: [{ file: 'a.csv' }],
  analyses: [],
};

function kept(study: StudyDocument, draft: Parameters<typeof withOwn>[1]): StudyDocument {
  const next = withOwn(study, draft);
  if ('fault' in next) throw new Error(next.fault);
  return next;
}

describe('an attribute of one’s own', () => {
  const shape = kept(EMPTY, {
    ...NEW_DRAFT,
    label: 'Weight shape',
    terms: 'round\n  ball\n  disc\nangular\n  pyramid\n    stepped pyramid\n',
  });

  it('of kinds has a tree as its lines stand in', () => {
    const study = checkStudy(shape, 'study.json');
    const vocabulary = studyRegister(study).vocabularies.get('weightShape');
    if (vocabulary === undefined) throw new Error('no vocabulary');
    expect(vocabulary.terms.map(({ id, parent }) => [id, parent])).toEqual([
      ['round', undefined],
      ['ball', 'round'],
      ['disc', 'round'],
      ['angular', undefined],
      ['pyramid', 'angular'],
      ['steppedPyramid', 'pyramid'],
    ]);
    expect(isWithin(vocabulary, 'steppedPyramid', 'angular')).toBe(true);
  });

  it('reads a column by its own words', () => {
    const files = new Map([
      ['a.csv', new TextEncoder().encode('Find no.,Weight shape\nA,Disc\nB,stepped pyramid\n')],
    ]);
    const column = prepareStudy(checkStudy(shape, 'study.json'), files).fragments.columns.get('weightShape');
    expect(column?.kind === 'term' && [...column.codes].map((code) => column.levels[code])).toEqual([
      'disc',
      'steppedPyramid',
    ]);
  });

  it('is shown as it was written, and written again unchanged', () => {
    const draft = draftOf(shape, shape.attributes![0]);
    expect(draft.terms).toBe('round\n  ball\n  disc\nangular\n  pyramid\n    stepped pyramid');
    expect(kept(shape, draft)).toEqual(shape);
  });

  it('changes its scale, and what belongs to the old one goes', () => {
    const mass = kept(shape, {
      ...draftOf(shape, shape.attributes![0]),
      scale: 'ratio',
      unit: ' g ',
      log: true,
    });
    expect(mass.attributes).toEqual([
      {
        id: 'weightShape',
        label: 'Weight shape',
        block: 'find',
        scale: 'ratio',
        unit: 'g',
        transform: 'log',
        source: 'defined by the study',
      },
    ]);
    expect(mass.terms).toEqual([]);
  });

  it('of grades needs two, and says so', () => {
    const next = withOwn(EMPTY, { ...NEW_DRAFT, label: 'Wear of weights', scale: 'ordinal', levels: 'worn' });
    expect('fault' in next && next.fault).toMatch(/fewer than two levels; list its grades/);
  });

  it('never takes the name of one that is known', () => {
    const own = kept(EMPTY, { ...NEW_DRAFT, label: 'Length', scale: 'ratio' });
    expect(own.attributes?.[0]?.id).toBe('length2');
    expect(withOwn(EMPTY, NEW_DRAFT)).toEqual({ fault: 'Give the attribute a name.' });
  });

  it('goes with its kinds, and leaves those of others', () => {
    const two = kept(shape, { ...NEW_DRAFT, label: 'Clay', terms: 'red\ngrey' });
    const one = withoutOwn(two, 'weightShape');
    expect(one.attributes?.map(({ id }) => id)).toEqual(['clay']);
    expect(one.terms?.map(({ vocabulary }) => vocabulary)).toEqual(['clay', 'clay']);
  });
});
