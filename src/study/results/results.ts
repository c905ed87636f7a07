import type { Answer, Counts, Figure, ResultTable } from '../../analyses/contract.ts';
import type { Witness } from '../../fragments/items/witness.ts';

/** What a study's run hands over; `results-json.ts` writes it, the schema of it is in `results-schema.ts`. */
export interface Results {
  readonly study: StudyHead;
  readonly analyses: Readonly<Record<string, AnalysisResult>>;
}

export interface StudyHead {
  readonly title: string;
  readonly seed: number;
  readonly unit: 'item' | 'fragment';
  readonly witness: Witness;
  /** Version of Thrum that computed the results. */
  readonly version: string;
  readonly sources: readonly SourceHead[];
  /** After the selection: what the analyses were given. */
  readonly n: Counts;
  /** Attributes in which fragments of one item contradict each other, by how many items. */
  readonly disagreements: readonly {
    readonly attribute: string;
    readonly label: string;
    readonly items: number;
  }[];
  /** Whether the data are ready for a verdict, a line for each thing that verdicts lean on. */
  readonly readiness: readonly ReadinessLine[];
  /** What finds, people and rights may need to be spared. */
  readonly cautions: readonly string[];
  /** What holds of every answer of the kinds that were asked, said once. */
  readonly always: readonly string[];
}

/** One thing that verdicts lean on, and whether it is ready. */
export interface ReadinessLine {
  readonly topic:
    | 'witness'
    | 'names'
    | 'compounds'
    | 'labels'
    | 'level'
    | 'certainty'
    | 'identification'
    | 'gaps'
    | 'recorders'
    | 'columns'
    | 'shrinkage';
  /** `ready`: nothing is open; `mind`: it can turn an answer; `ask`: somebody who knows the tables can settle it. */
  readonly state: 'ready' | 'mind' | 'ask';
  readonly says: string;
  /** What mends it. */
  readonly mend?: string;
}

export interface SourceHead {
  readonly file: string;
  readonly role: 'fragments' | 'assemblages';
  readonly sha256: string;
  readonly rowsRead: number;
  readonly rowsKept: number;
  readonly rowsSetAside: number;
  /** Ledger entries by level. */
  readonly ledger: { readonly read: number; readonly flagged: number; readonly notUnderstood: number };
}

export interface AnalysisResult {
  readonly kind: string;
  readonly title: string;
  /** What the reader remarked on the finding. */
  readonly note?: string;
  readonly options: Readonly<Record<string, unknown>>;
  readonly n: Counts;
  readonly tables: Readonly<Record<string, ResultTable>>;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly words: Answer;
  /** Present where the analysis could not be computed. */
  readonly why?: string;
}
