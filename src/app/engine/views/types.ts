/** How the rules of a typology answer for the records, type by type. */
export interface TypesView {
  /** Why the rules cannot be read, in a sentence; then everything else is empty. */
  readonly fault: string | null;
  /** Records that the typology speaks of. */
  readonly records: number;
  readonly types: readonly {
    readonly id: string;
    readonly label: string;
    readonly rule: string;
    readonly fits: number;
    readonly out: number;
    readonly cannotSay: number;
    /** Records that are of this type after all rules are asked in their order. */
    readonly taken: number;
  }[];
  readonly none: number;
  readonly several: number;
  readonly undecided: number;
  readonly overlaps: readonly { readonly first: string; readonly second: string; readonly records: number }[];
  /** Attributes that the rules cut, with their limits and the ends of the readings. */
  readonly cuts: readonly {
    readonly attribute: string;
    readonly label: string;
    readonly unit: string;
    readonly cuts: readonly number[];
    readonly least: number;
    readonly most: number;
  }[];
}
