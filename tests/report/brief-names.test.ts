import { describe, expect, it } from 'vitest';
import { checkStudy, loadStudy } from '../../src/study/load.ts';

const study = {
  title: 'Invented',
  sources: [{ file: 'a.csv' }],
  analyses: [{ id: 'made', kind: 'summary', of: ['structure'] }],
};

describe('what a study names for its brief', () => {
  it('must be asked in a study file', () => {
    const text = (brief: readonly string[]) => JSON.stringify({ ...study, brief });
    expect(() => loadStudy(text(['mode']), 'study.json')).toThrow(
      'study.json, brief[0]: there is no analysis "mode"; write "made" if that is meant',
    );
    expect(loadStudy(text(['made']), 'study.json').brief).toEqual(['made']);
  });

  it('does not stop a screen that asks a part of the study alone', () => {
    expect(checkStudy({ ...study, brief: ['made'], analyses: [] }, 'study.json').analyses).toEqual([]);
  });
});
