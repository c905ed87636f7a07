import { reference } from '../../references/reference.ts';
import type { MatrixRows } from '../compare-up-to-sign.ts';

interface Correction {
  readonly constant: readonly number[];
  readonly eigenvalues: readonly number[];
  readonly points: MatrixRows;
}

/** What R gives for principal coordinates and for corrections of dissimilarities. */
interface Reference {
  readonly scalings: readonly {
    readonly name: string;
    readonly distances: readonly number[];
    readonly points: MatrixRows;
    readonly eigenvalues: readonly number[];
  }[];
  readonly iterative: {
    readonly data: MatrixRows;
    readonly points: MatrixRows;
    readonly eigenvalues: readonly number[];
  };
  readonly corrections: readonly {
    readonly name: string;
    readonly distances: readonly number[];
    readonly lingoes: Correction;
    readonly cailliez: Correction;
    readonly lingoesDistances: readonly number[];
    readonly cailliezDistances: readonly number[];
  }[];
}

export const r = reference<Reference>('ordination');
