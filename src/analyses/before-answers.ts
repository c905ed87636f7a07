import type { Answer, Findings, ResultTable } from './contract.ts';

/** What an analysis says that still speaks in one sentence with cautions. */
export interface Words {
  readonly sentence: string;
  readonly cautions: readonly string[];
}

/** Findings that still carry their tables. */
export interface FindingsWithTables extends Findings {
  readonly tables: Readonly<Record<string, ResultTable>>;
}

export function answerOf({ sentence, cautions }: Words): Answer {
  return {
    answer: sentence,
    because: [],
    unless: cautions.map((caution) => ({ what: caution, size: '', overturns: false })),
  };
}
