import type { Register } from '../../attributes/definition.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import type { Weighed } from './weigh-match.ts';

/** Fewer columns alike are no table of kinds. */
const FEWEST_ALIKE = 8;
/** In a table of kinds few headers are words of ours, and by chance. */
const MOST_MEANT = 0.25;

/**
 * In a table of kinds or of yes/no characters many columns hold the same sort of small numbers; a header among them
 * that is a word of ours ("PPI", "Carre", "MNI") names a kind. Yes/no attributes and an attribute's own name stay.
 */
export function leaveKinds(
  weighed: Map<number, Weighed>,
  evidence: readonly ColumnEvidence[],
  register: Register,
): void {
  const bits = alike(evidence, /^[01]$/);
  const counts = alike(evidence, /^\d{1,4}$/);
  // Beside a pattern of noughts and ones a number says how often it was met.
  const blocks = bits.length >= 0.8 * counts.length ? [bits] : [counts];
  for (const block of blocks) {
    if (block.length < FEWEST_ALIKE) continue;
    const meant = block.filter(
      (index) => !evidence[index]!.allDifferent && namesOther(weighed.get(index), register),
    );
    if (meant.length > MOST_MEANT * block.length) continue;
    for (const index of meant) {
      const found = weighed.get(index)!;
      if (found.kind === 'leave' || (found.kind === 'take' && found.own)) continue;
      const id = found.kind === 'take' ? found.id : found.suggestion.attribute;
      const { label } = register.attributes.get(id)!;
      const doubt = `may be "${label}", but stands among ${block.length} columns of such numbers, which seem to be kinds`;
      weighed.set(index, { kind: 'leave', doubt });
    }
  }
}

/** Read or asked about as something that is no yes or no. */
function namesOther(found: Weighed | undefined, register: Register): boolean {
  if (found === undefined || found.kind === 'leave') return false;
  const id = found.kind === 'take' ? found.id : found.suggestion.attribute;
  const { scale } = register.attributes.get(id)!;
  return scale !== 'presence' && scale !== 'binary';
}

/** Columns of whole numbers only, of which half or more hold a nought. */
function alike(evidence: readonly ColumnEvidence[], cell: RegExp): number[] {
  const columns = evidence.flatMap(({ filled, distinct }, index) =>
    filled > 1 && distinct.every((text) => cell.test(text)) ? [index] : [],
  );
  const withNought = columns.filter((index) => evidence[index]!.distinct.includes('0'));
  return withNought.length >= 0.5 * columns.length ? columns : [];
}
