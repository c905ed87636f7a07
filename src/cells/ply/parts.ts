import { foldCell } from '../text.ts';
import {
  BETWEEN,
  FOLD,
  NOISE,
  NUMBERS,
  PLIED,
  PLIED_BEFORE,
  SPUN,
  SPUN_BEFORE,
  STRANDS,
  STRANDS_OF_PLY,
} from './words.ts';

export type Part =
  | { kind: 'letters'; text: string }
  | { kind: 'number'; value: number }
  | { kind: 'fold'; value: number }
  | { kind: 'plied' | 'spun'; before: boolean }
  | { kind: 'open' | 'close' | 'slash' | 'break' }
  | { kind: 'strands'; ofPly: boolean };

/** What one word or sign of a notation is; null where it says nothing. */
export function partOf(raw: string): Part | null | 'unknown' {
  if (/^\d+$/u.test(raw)) return { kind: 'number', value: Number(raw) };
  if (/^[szi]{1,4}$/iu.test(raw)) return { kind: 'letters', text: raw };
  if (raw === '(' || raw === '[') return { kind: 'open' };
  if (raw === ')' || raw === ']') return { kind: 'close' };
  if (raw === '/') return { kind: 'slash' };
  if (raw === ',' || raw === ';') return { kind: 'break' };
  if (/^[-.:+x×*→>]$/u.test(raw)) return null;
  const folded = foldCell(raw);
  if (FOLD.test(folded)) {
    const [stem = ''] = /^(?:zwei|drei|vier|sechs|to|tre|fire)/u.exec(folded) ?? [];
    return { kind: 'fold', value: NUMBERS[stem]! };
  }
  const number = Object.hasOwn(NUMBERS, folded) ? NUMBERS[folded] : undefined;
  if (number !== undefined) return { kind: 'number', value: number };
  if (PLIED.test(folded) || PLIED_BEFORE.test(folded))
    return { kind: 'plied', before: PLIED_BEFORE.test(folded) };
  if (SPUN.test(folded) || SPUN_BEFORE.test(folded))
    return { kind: 'spun', before: SPUN_BEFORE.test(folded) };
  if (STRANDS.test(folded)) return { kind: 'strands', ofPly: STRANDS_OF_PLY.test(folded) };
  return BETWEEN.test(folded) || NOISE.test(folded) ? null : 'unknown';
}
