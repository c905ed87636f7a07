import { dittoAddition, withAddition } from '../../cells/ditto.ts';
import { isDoubtfulIdem, isIdem } from '../../cells/nothing.ts';

export interface CopiedDown {
  readonly texts: readonly string[];
  /** Positions whose text came from above; null where nothing did. */
  readonly copied: readonly number[];
  /** Positions whose text came from above in part, and said something anew. */
  readonly added: readonly number[];
  /** Positions that say "as above" with nothing above them. */
  readonly dangling: readonly number[];
}

/**
 * Puts the text above in the place of "idem" and its like, and of blank cells too where the profile says
 * that a blank means "as above". What the profile has a code for says what the code says.
 * @param joined whether the cell is merged with the one above.
 * @param names whether the column holds names and references: there "ebd., Grab 5" is made whole, and "s.o." is no
 * "sans objet", as it may be below a measurement or a term.
 * @param coded whether the profile has a code for a text.
 */
export function copyDown(
  texts: readonly string[],
  blanks: boolean,
  joined: (position: number) => boolean = () => false,
  names = false,
  coded: (text: string) => boolean = () => false,
): CopiedDown {
  const copied: number[] = [];
  const added: number[] = [];
  const dangling: number[] = [];
  const cache = new Map<string, boolean>();
  const known = (text: string): boolean => {
    let ditto = cache.get(text);
    if (ditto === undefined) {
      ditto = isIdem(text) && !coded(text) && (names || !isDoubtfulIdem(text));
      cache.set(text, ditto);
    }
    return ditto;
  };
  let above = '';
  let changed: string[] | null = null;
  for (let i = 0; i < texts.length; i++) {
    const text = texts[i]!;
    const ditto = mayBeDitto(text) && known(text);
    const more = names && !ditto && mayAdd(text) ? dittoAddition(text) : null;
    if (more !== null && above.trim() !== '') {
      above = withAddition(above, more);
      changed ??= [...texts];
      changed[i] = above;
      added.push(i);
      continue;
    }
    if (!ditto && !(text.trim() === '' && (blanks || joined(i)))) {
      above = text;
      continue;
    }
    if (above.trim() === '') {
      if (ditto) dangling.push(i);
      continue;
    }
    changed ??= [...texts];
    changed[i] = above;
    copied.push(i);
  }
  return { texts: changed ?? texts, copied, added, dangling };
}

/** The words for "as above" begin with one of these letters; most cells need no closer look. */
function mayAdd(text: string): boolean {
  return text.length <= 200 && /^\s*[abcdeisw]/iu.test(text);
}

/** Longer texts, and texts with digits, say more than "as above". */
function mayBeDitto(text: string): boolean {
  return text !== '' && text.length <= 20 && !/\d/.test(text);
}

/**
 * Blank cells that stand below a name, where every name stands once: such a column names each block of rows
 * at its head. 0 where the first cell is blank, a name is repeated, or nothing is blank.
 */
export function blanksBelow(texts: readonly string[]): number {
  if ((texts[0] ?? '').trim() === '') return 0;
  const names = new Set<string>();
  let blanks = 0;
  for (const text of texts) {
    const name = text.trim();
    if (name === '') blanks++;
    else if (names.has(name)) return 0;
    else names.add(name);
  }
  return blanks;
}
