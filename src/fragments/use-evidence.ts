import { foldText } from '../attributes/folding.ts';
import { termAt } from './accessors.ts';
import { isMissing } from './missing.ts';
import type { FragmentTable } from './table.ts';

/**
 * Words, folded, for what can show a use on the piece itself: its shape, a seam, its place on a body, traces of
 * wear, a handle or a strap. Likeness to another find, its fabric, its place in a building or a guess cannot.
 * Common practice, no source.
 */
const ON_THE_PIECE = new RegExp(
  '(?:^| )(?:' +
    'shape\\p{L}*|cut to shape|seams?|sewn|sewing|on (?:the |a )?body|body|worn|wear|use ?wear|handles?|straps?|sleeves?|' +
    'form\\p{L}*|zuschnitt|naht|nahte|am korper|korper\\p{L}*|trage\\p{L}*|abnutzung|gebrauchsspuren|henkel|griff|riemen|' +
    'forme|coupe|coutures?|corps|usure|anse|sangle|forma|cucitur[ae]|corpo|usura|manico|costuras?|cuerpo|desgaste|asa|correa|' +
    'facon|snit|som|krop\\p{L}*|slid\\p{L}*|hank|rem|slitasje|sauma?' +
    ')(?: |$)',
  'u',
);
const ELSEWHERE =
  /(?:^| )(?:compar\p{L}*|analog\p{L}*|parallel\p{L}*|like(?:ly|ness)?|guess\p{L}*|vergleich\p{L}*|vermut\p{L}*|conjectur\p{L}*|supuest\p{L}*|suppos\p{L}*|gaet\p{L}*|gjett\p{L}*|sammenlign\p{L}*|none|no evidence)(?: |$)/u;

/** Whether the basis of a recorded use lies on the piece, so that the use is more than a likeness. */
export function isWellAttested(basis: string): boolean {
  const words = foldText(basis);
  return ON_THE_PIECE.test(words) && !ELSEWHERE.test(words);
}

/** Rows whose recorded use rests on the piece itself, as its basis is recorded. */
export function wellAttestedUse(table: FragmentTable): (row: number) => boolean {
  const column = table.columns.get('useBasis');
  const certain = table.columns.get('recordedUse');
  if (column === undefined || column.kind === 'numeric') return () => false;
  return (row) => {
    if (isMissing(column, row)) return false;
    if (certain?.kind === 'term' && certain.certainty[row] !== 0) return false;
    return isWellAttested(column.kind === 'term' ? (termAt(column, row) ?? '') : column.raw[row]);
  };
}
