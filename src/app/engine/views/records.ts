export interface RecordCell {
  readonly attribute: string;
  readonly label: string;
  readonly unit?: string;
  readonly raw: string;
  /** "derived from …" with the cells it was computed from; absent for what was recorded. */
  readonly from?: string;
  readonly readAs: string;
  readonly state: string;
}

/** A schema of a structure, for orientation, with what it had to choose or leaves out. */
export interface DrawingView {
  readonly title: string;
  /** What passes over what. */
  readonly says: string;
  readonly notes: readonly string[];
  /** One self-standing SVG. */
  readonly svg: string;
}

/** Everything about one record: the fragments it stands for, their cells and the lines they came from. */
export interface RecordView {
  readonly id: string;
  readonly item: string;
  readonly assemblage: string;
  readonly fragments: readonly {
    readonly id: string;
    readonly source: string;
    readonly row: number;
    readonly cells: readonly RecordCell[];
    readonly drawing: DrawingView | null;
    readonly line: readonly { readonly header: string; readonly text: string }[];
  }[];
}

/** Why two records are alike. */
export interface PairView {
  readonly distance: number | null;
  readonly blocks: readonly {
    readonly block: string;
    readonly share: number | null;
    readonly distance: number | null;
  }[];
  readonly attributes: readonly {
    readonly label: string;
    readonly block: string;
    readonly left: string;
    readonly right: string;
    readonly distance: number | null;
    readonly share: number | null;
  }[];
}
