import type { ColumnEvidence } from './column-evidence.ts';

/** Cells that say yes or no, in words or as nought and one. */

export const YES_NO =
  /^(?:x|\+|y|n|t|f|true|false|yes|no|ja|nein|oui|non|sì|si|sí|nej|nei|present|absent|vrai|faux|vorhanden|nicht vorhanden|présent|absente?)$/i;

export const saysYesNo = (said: readonly string[]): boolean =>
  said.length <= 3 && said.every((text) => YES_NO.test(text));

/** Nought and one, both, in several cells. */
export const areNoughtAndOne = (evidence: ColumnEvidence, said: readonly string[]): boolean =>
  evidence.filled >= FEWEST_BITS && said.length === 2 && said.includes('0') && said.includes('1');
const FEWEST_BITS = 4;
