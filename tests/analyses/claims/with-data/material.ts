import type { Material } from '../../../../src/analyses/claims/data/check-data.ts';
import { checkStudy } from '../../../../src/study/load.ts';
import { prepareStudy } from '../../../../src/study/prepare.ts';
import { reference } from '../../../references/reference.ts';

type Numbers = readonly number[];

/** A measure by the groups of a kind. */
export interface SampleSet {
  readonly measure: string;
  readonly by: string;
  readonly groups: readonly string[];
  /** Records of each group, those without a reading too. */
  readonly sizes: Numbers;
  /** In the order of `at`. */
  readonly values: readonly Numbers[];
  readonly all: Numbers;
}

/** Places of the values of a sample. */
export const at = {
  n: 0,
  mean: 1,
  sd: 2,
  se: 3,
  cv: 4,
  median: 5,
  q1: 6,
  q3: 7,
  min: 8,
  max: 9,
  low: 10,
  high: 11,
} as const;

export interface Pair {
  readonly measure: string;
  readonly by: string;
  readonly a: string;
  readonly b: string;
  readonly n: Numbers;
  readonly difference: Numbers;
  /** t, degrees of freedom, p, both ends of the interval. */
  readonly student: Numbers;
  readonly welch: Numbers;
  /** W of R, p without and with the correction for continuity. */
  readonly u: Numbers;
  readonly d: Numbers;
  readonly g: Numbers;
}

export interface Several {
  readonly measure: string;
  readonly by: string;
  readonly f: Numbers;
  readonly welch: Numbers;
  readonly h: Numbers;
  readonly eta: Numbers;
}

export interface Crossed {
  readonly rows: string;
  readonly columns: string;
  readonly rowTerms: readonly string[];
  readonly columnTerms: readonly string[];
  readonly cells: readonly Numbers[];
  /** Chi-squared, degrees of freedom, p. */
  readonly chi: Numbers;
  readonly v: Numbers;
  /** Of 2 x 2: after Yates with its p, Fisher's p, odds ratio with its interval; else empty. */
  readonly two: Numbers;
}

export interface Together {
  readonly a: string;
  readonly b: string;
  readonly n: Numbers;
  readonly r: Numbers;
  readonly rho: Numbers;
  readonly tau: Numbers;
}

export interface OpenSet {
  readonly data: string;
  readonly csv: string;
  /** Id -> label. */
  readonly kinds: Readonly<Record<string, string>>;
  readonly measures: Readonly<Record<string, string>>;
  readonly steps: Numbers;
  readonly samples: readonly SampleSet[];
  readonly pairs: readonly Pair[];
  readonly several: readonly Several[];
  readonly counts: readonly Crossed[];
  readonly together: readonly Together[];
}

/** R 4.2.2 on data sets of MASS, HSAUR3 and lattice: tests/references/scripts/printed-with-data.R. */
export const { sets } = reference<{ readonly sets: readonly OpenSet[] }>('printed-with-data');

/** The records of a set as a study has them: each kind and measure an attribute of its own. */
export function materialOf(set: OpenSet): Material {
  const attribute = (id: string, label: string, scale: string) => ({
    id,
    label,
    block: 'context',
    scale,
    source: set.data,
  });
  const kinds = Object.entries(set.kinds);
  const measures = Object.entries(set.measures);
  const study = checkStudy(
    {
      title: set.data,
      seed: 1,
      unit: 'fragment',
      attributes: [
        ...kinds.map(([id, label]) => attribute(id, label, 'nominal')),
        ...measures.map(([id, label]) => attribute(id, label, 'interval')),
      ],
      sources: [{ file: 'records.csv', profile: 'records.profile.json' }],
      analyses: [],
    },
    set.data,
  );
  const profile = {
    encoding: 'utf-8',
    delimiter: ',',
    decimal: '.',
    columns: [
      { header: 'record', attribute: 'fragment' },
      ...[...kinds, ...measures].map(([id]) => ({ header: id, attribute: id })),
    ],
  };
  const bytes = (text: string) => new TextEncoder().encode(text);
  const { fragments, records, register } = prepareStudy(
    study,
    new Map([
      ['records.csv', bytes(set.csv)],
      ['records.profile.json', bytes(JSON.stringify(profile))],
    ]),
  );
  return { fragments, records, register, unit: study.unit };
}
