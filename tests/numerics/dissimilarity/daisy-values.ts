import { reference } from '../../references/reference.ts';

/** What R's cluster and ade4 give for dissimilarities of mixed attributes and of grades. */
export interface Cases {
  readonly cases: readonly {
    readonly name: string;
    readonly weights: readonly number[];
    readonly distances: readonly (number | null)[];
    readonly columns: readonly (
      | { readonly kind: 'quantity'; readonly values: readonly (number | null)[] }
      | { readonly kind: 'kinds'; readonly codes: readonly number[]; readonly levels: number }
      | { readonly kind: 'presence'; readonly codes: readonly number[] }
    )[];
  }[];
  readonly podani: { readonly grades: readonly number[]; readonly distances: readonly number[] };
}

export const daisy = reference<Cases>('dissimilarity');
