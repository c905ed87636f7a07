import type { SeemingCounts } from '../../../sources/columns/looks-like-counts.ts';
import type { Proposal } from '../../../sources/columns/propose-attributes.ts';
import type { ColumnReading, RepeatedId, TooLongRows } from '../../../sources/source-reading.ts';
import type { DuplicateView, OpenTerm, SourceView } from '../../engine/views/sources.ts';

export type ColumnQuestionKind =
  | { readonly kind: 'suggested'; readonly column: ColumnReading }
  | { readonly kind: 'unknown'; readonly column: ColumnReading }
  | { readonly kind: 'doubt'; readonly column: ColumnReading; readonly doubt: string };

/** What a source leaves to the reader's judgement. */
export type SourceQuestion =
  | ColumnQuestionKind
  | { readonly kind: 'term'; readonly term: OpenTerm }
  | { readonly kind: 'terms'; readonly header: string; readonly terms: readonly OpenTerm[] }
  | { readonly kind: 'sheet' }
  | { readonly kind: 'too-long'; readonly tooLong: TooLongRows }
  | { readonly kind: 'counts'; readonly counts: SeemingCounts }
  | { readonly kind: 'as-is'; readonly proposals: readonly Proposal[] }
  | { readonly kind: 'blanks'; readonly column: ColumnReading }
  | { readonly kind: 'unit'; readonly column: ColumnReading; readonly unit: string }
  | { readonly kind: 'pieces'; readonly column: ColumnReading; readonly count: number }
  | { readonly kind: 'repeated'; readonly repeated: RepeatedId }
  | { readonly kind: 'repeated-all'; readonly count: number }
  | { readonly kind: 'duplicate'; readonly pair: DuplicateView }
  | { readonly kind: 'duplicate-all'; readonly pairs: readonly DuplicateView[] };

/** The questions of one source, most consequential first. */
export function questionsOf(
  source: SourceView,
  duplicates: readonly DuplicateView[],
): readonly SourceQuestion[] {
  // A workbook whose sheet is open cannot be read at all; its other questions come after.
  if (source.gridRows === 0) return source.sheets.length > 1 ? [{ kind: 'sheet' }] : [];
  const { columns } = source;
  const unsettled = columns.filter(({ via }) => via !== 'profile');
  const within = duplicates.filter(
    ({ first, second }) => first.source === source.name && second.source === source.name,
  );
  // Columns that can be taken as they are ask one question together; a suggested one is asked about by itself.
  const suggested = new Set(
    columns.flatMap(({ header, status }) => (status === 'suggested' ? [header] : [])),
  );
  const own = source.asIs.filter(({ header }) => !suggested.has(header));
  const asIs = own.length > 1 ? own : [];
  const together = new Set(asIs.map(({ header }) => header));
  const repeated = source.repeatedIds.filter(({ decision }) => decision === null);
  return [
    ...(source.tooLong === undefined ? [] : [{ kind: 'too-long' as const, tooLong: source.tooLong }]),
    // What the table counts decides what its columns are.
    ...(source.counts === null ? [] : [{ kind: 'counts' as const, counts: source.counts }]),
    ...columns
      .filter(({ status }) => status === 'suggested')
      .map((column) => ({ kind: 'suggested' as const, column })),
    ...(asIs.length === 0 ? [] : [{ kind: 'as-is' as const, proposals: asIs }]),
    ...unsettled.flatMap((column): SourceQuestion[] => {
      if (column.status === 'unknown' && column.filled > 0)
        return together.has(column.header) ? [] : [{ kind: 'unknown', column }];
      if (column.status === 'matched' && column.doubt !== undefined)
        return [{ kind: 'doubt', column, doubt: column.doubt }];
      return [];
    }),
    ...columns
      .filter(({ blanksBelow }) => blanksBelow !== undefined)
      .map((column) => ({ kind: 'blanks' as const, column })),
    ...columns.flatMap((column): SourceQuestion[] =>
      column.assumedUnit === undefined ? [] : [{ kind: 'unit', column, unit: column.assumedUnit }],
    ),
    ...columns.flatMap((column): SourceQuestion[] =>
      column.severalPieces === undefined ? [] : [{ kind: 'pieces', column, count: column.severalPieces }],
    ),
    ...(repeated.length > 1 ? [{ kind: 'repeated-all' as const, count: repeated.length }] : []),
    ...repeated.map((one) => ({ kind: 'repeated' as const, repeated: one })),
    ...(within.length > 1 ? [{ kind: 'duplicate-all' as const, pairs: within }] : []),
    ...duplicates
      .filter(({ second }) => second.source === source.name)
      .map((pair) => ({ kind: 'duplicate' as const, pair })),
    ...termQuestions(source.openTerms),
  ];
}

/** Questions that are shown at first. */
export const SHOWN = 8;
/** A page of more questions than this is answered by nobody; the next ones come as these are answered. */
export const MOST = 40;

/** Those of them that a page shows. */
export function onOnePage(questions: readonly SourceQuestion[], all: boolean): readonly SourceQuestion[] {
  return questions.slice(0, all ? MOST : SHOWN);
}

/** From so many on, the wordings of a column ask one question together. */
const TOGETHER = 4;

function termQuestions(open: readonly OpenTerm[]): readonly SourceQuestion[] {
  const columns = new Map<string, OpenTerm[]>();
  for (const term of open) columns.set(term.header, [...(columns.get(term.header) ?? []), term]);
  return [...columns].flatMap(([header, terms]): SourceQuestion[] =>
    terms.length < TOGETHER
      ? terms.map((term) => ({ kind: 'term', term }))
      : [{ kind: 'terms', header, terms }],
  );
}

export function questionKey(question: SourceQuestion): string {
  switch (question.kind) {
    case 'term':
      return `term:${question.term.header}:${question.term.text}`;
    case 'terms':
      return `terms:${question.header}`;
    case 'sheet':
    case 'too-long':
    case 'counts':
    case 'as-is':
    case 'repeated-all':
    case 'duplicate-all':
      return question.kind;
    case 'repeated':
      return `repeated:${question.repeated.id}`;
    case 'duplicate':
      return `duplicate:${question.pair.first.source}:${question.pair.first.id}:${question.pair.second.id}`;
    default:
      return `${question.kind}:${question.column.index}`;
  }
}
