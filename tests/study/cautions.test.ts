import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';

/** What finds, people and places may need to be spared is said where the table gives cause for it, and not elsewhere. */

function cautionsOf(head: string, ...lines: readonly string[]): readonly string[] {
  const files = new Map([['finds.csv', new TextEncoder().encode([head, ...lines].join('\n'))]]);
  const study = checkStudy(
    { title: 'x', unit: 'fragment', sources: [{ file: 'finds.csv' }], analyses: [] },
    'study.json',
  );
  return analyse(prepareStudy(study, files), files).study.cautions;
}

const beginning = (cautions: readonly string[]) =>
  cautions.map((line) => line.split(/[:(]| is | are | destroys/)[0].trim());

describe('cautions', () => {
  it('of a table of places alone speak of rights alone', () => {
    expect(beginning(cautionsOf('id,site', 'a,Ness', 'b,Holm'))).toEqual(['Rights']);
  });

  it('speak of handling and of sampling where there is cloth and fibre', () => {
    expect(beginning(cautionsOf('id,structure', 'a,tabby'))).toEqual(['Handling', 'Rights']);
    expect(beginning(cautionsOf('id,fibre', 'a,wool'))).toEqual([
      'Handling',
      'Sampling for fibre, dye or date',
      'Rights',
    ]);
    expect(beginning(cautionsOf('id,site,fibre', 'a,Ness,'))).toEqual(['Rights']);
  });

  it('name the states of preservation where there is more than one', () => {
    const one = cautionsOf('id,preservation', 'a,charred', 'b,charred');
    expect(one.join(' ')).not.toContain('Several states');
    const two = cautionsOf('id,preservation', 'a,charred', 'b,waterlogged');
    expect(two.join(' ')).toContain('Several states of preservation are compared (charred, waterlogged).');
  });

  it('speak of places where coordinates are, and of people where recorders are named', () => {
    expect(beginning(cautionsOf('id,latitude,longitude', 'a,54.1,3.2'))).toEqual(['Places', 'Rights']);
    expect(beginning(cautionsOf('id,latitude,longitude', 'a,,'))).toEqual(['Rights']);
    expect(beginning(cautionsOf('id,recorder', 'a,A. Miller'))).toEqual(['People', 'Rights']);
  });

  it('count the records that mention graves or bodies', () => {
    const said = (...remarks: string[]) =>
      cautionsOf('id,site,remarks', ...remarks.map((remark, i) => `f${i},Ness,${remark}`)).find((line) =>
        line.startsWith('Human remains'),
      );
    expect(said('from a grave', 'pit')).toContain('mentioned in 1 record:');
    expect(said('from a grave', 'pit', 'aus Grab 3')).toContain('mentioned in 2 records:');
    expect(said('engraved', 'pit')).toBeUndefined();
  });
});
