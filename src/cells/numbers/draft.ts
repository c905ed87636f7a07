import { notUnderstood } from '../notes.ts';
import type { Note } from '../reading.ts';
import type { Measure } from './measure.ts';
import type { Cursor } from './quantity.ts';

/** Everything that is known of the statement while its tokens are read. */
export interface Draft {
  low: number;
  high: number;
  step: number;
  unit: string | undefined;
  open: 'low' | 'high' | undefined;
  about: boolean;
  doubt: number;
  isMean: boolean;
  /** The cell names what it measures: "30 mm long". */
  labelled: boolean;
  interval: boolean;
  other: Measure | undefined;
  notes: Note[];
}

/** Names the part that could not be read. */
export function misread(cursor: Cursor, at = cursor.at): Note {
  const token = cursor.tokens[at];
  const part =
    token === undefined
      ? 'the text ends where a number should stand'
      : token.kind === 'other'
        ? `"${token.text}" is not understood here`
        : `the parts do not make a number or range (${token.kind === 'sign' ? `"${token.sign}"` : token.kind} at part ${at + 1})`;
  return notUnderstood('not-a-number', `${part}; the text is kept without a reading`);
}
