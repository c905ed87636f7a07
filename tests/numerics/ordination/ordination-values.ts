import type { MixedColumn } from '../../../src/numerics/ordination/mixed.ts';
import type { KindsColumn } from '../../../src/numerics/ordination/multiple-correspondence.ts';
import { reference } from '../../references/reference.ts';
import type { MatrixRows } from '../compare-up-to-sign.ts';

/** What R's packages give for the ordinations of this folder; made by the script of the same name beside the values. */
interface Reference {
  readonly components: readonly {
    readonly name: string;
    readonly data: MatrixRows;
    readonly scale: boolean;
    readonly sdev: readonly number[];
    readonly rotation: MatrixRows;
    readonly scores: MatrixRows;
  }[];
  readonly tables: readonly {
    readonly name: string;
    readonly counts: MatrixRows;
    readonly eigenvalues: readonly number[];
    readonly rows: MatrixRows;
    readonly columns: MatrixRows;
    readonly rowMasses: readonly number[];
    readonly rowInertias: readonly number[];
    readonly columnInertias: readonly number[];
    readonly suprow: number;
    readonly supcol: number;
    readonly supplementaryEigenvalues: readonly number[];
    readonly supplementaryRow: readonly number[];
    readonly supplementaryColumn: readonly number[];
    readonly activeRows: MatrixRows;
  }[];
  readonly multiples: readonly {
    readonly name: string;
    readonly columns: readonly KindsColumn[];
    readonly eigenvalues: readonly number[];
    readonly rows: MatrixRows;
    readonly categories: MatrixRows;
    readonly ratios: MatrixRows;
    readonly mcaEigenvalues: readonly number[];
    readonly adjustedInertias: readonly number[];
    readonly adjustedShares: readonly number[];
  }[];
  readonly mixtures: readonly {
    readonly name: string;
    readonly columns: readonly MixedColumn[];
    readonly eigenvalues: readonly number[];
    readonly rows: MatrixRows;
    readonly parts: MatrixRows;
    readonly ratios: MatrixRows;
  }[];
}

export const r = reference<Reference>('ordination');
