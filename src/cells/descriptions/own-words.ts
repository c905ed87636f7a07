import { lookupKey } from '../../attributes/folding.ts';
import { ownValue } from '../text.ts';
import type { Sense } from './lexicon.ts';

/** What the source's own profile says of wordings: text -> senses; "" leaves a wording out. */
export type Own = ReadonlyMap<string, readonly Sense[] | 'ignored'>;

/** The source's translations as wordings of their own. */
export function ownWords(
  translations: Readonly<Record<string, string>> | undefined,
  meaning: (text: string) => ReadonlyMap<string, string> | null,
): Own {
  const own = new Map<string, readonly Sense[] | 'ignored'>();
  for (const text of Object.keys(translations ?? {})) {
    const means = ownValue(translations, text) ?? '';
    if (means === '') own.set(lookupKey(text), 'ignored');
    const sets = means === '' ? null : meaning(means);
    if (sets !== null) own.set(lookupKey(text), [{ sets, alone: false, weak: false, via: text }]);
  }
  return own;
}
