import { reference } from '../references/reference.ts';

/** What R gives for dips, mixtures of normal distributions (mclust) and discriminants (MASS). */
interface Reference {
  dips: Record<string, { x: number[]; dip: number; p?: number }>;
  mixtures: {
    x: number[];
    k: number;
    spread: 'equal' | 'own';
    logLikelihood: number;
    bic: number;
    mean: number[] | number;
    sd: number[] | number;
    share: number[] | number;
  }[];
  discriminant: Record<
    string,
    { x: number[][]; groups: number[]; posterior: number[][]; left: number[][]; leftClass: number[] }
  >;
}

export const r = reference<Reference>('modes');
