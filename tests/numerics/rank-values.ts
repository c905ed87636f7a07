import { reference } from '../references/reference.ts';

interface Tested {
  readonly statistic: number;
  readonly p: number;
  readonly df?: number;
}

/** What R gives for tests of two samples and of several, by ranks and by means. */
interface Reference {
  readonly kSample: Record<
    string,
    { groups: number[][]; kruskal: Tested; anova: Tested; brownForsythe: Tested; welch: Tested | null }
  >;
  readonly twoSample: Record<
    string,
    {
      first: number[];
      second: number[];
      ties: boolean;
      U: number;
      pNormal: number;
      pExact: number | null;
      ks: Tested;
      shift: number;
      rankCorrelationDelta: number;
    }
  >;
}

export const { kSample, twoSample, tool, version } = reference<Reference>('rank-tests');
