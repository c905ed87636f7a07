import type { ClaimVerdict, FigureCheck } from '../../../analyses/claims/found.ts';
import type { Answer, Figure, ResultTable } from '../../../analyses/contract.ts';

/** A printed figure with all that was found about it. */
export interface JudgedView {
  readonly id: string;
  readonly place: string;
  readonly quantity: string;
  readonly printed: string;
  readonly verdict: ClaimVerdict;
  readonly says: string;
  readonly why: string;
  readonly explained: string;
  readonly resolve: string;
  readonly checks: readonly FigureCheck[];
}

/** What printed figures say of each other and, where there are data, what the data say of them. */
export interface ClaimsView {
  /** Why the claims file as a whole cannot be read. */
  readonly fault: string | null;
  /** Each line of the claims file with text: the figures it holds, or what is missing in it. */
  readonly lines: readonly {
    readonly row: number;
    readonly id: string;
    readonly figures: readonly string[];
    readonly fault: { readonly column: string; readonly text: string } | null;
  }[];
  readonly printed: readonly {
    readonly file: string;
    readonly kind: string;
    /** What each column was taken for, by its head. */
    readonly columns: readonly { readonly head: string; readonly role: string }[];
    /** Cells and words of which nothing was made. */
    readonly unread: readonly string[];
    /** Attributes of the data that its labels name; none where it is held against itself only. */
    readonly ofData: readonly string[];
    readonly figures: readonly string[];
    readonly fault: string | null;
  }[];
  readonly judged: readonly JudgedView[];
  readonly counts: Readonly<Record<ClaimVerdict, number>>;
  readonly withData: boolean;
  /** Null while no figure is there. */
  readonly words: Answer | null;
  readonly tables: Readonly<Record<string, ResultTable>>;
  readonly figures: Readonly<Record<string, Figure>>;
}
