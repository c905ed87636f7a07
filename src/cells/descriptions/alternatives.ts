import { lowestCommon } from '../../attributes/tree.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import { quote } from '../notes.ts';
import type { Item } from './items.ts';
import type { Lexicon } from './lexicon.ts';
import { type Parsed, parseItems } from './parse.ts';
import type { Said } from './said.ts';

/** "no pile or tufts", "weder Flor noch Fransen": one denial for all that it joins. */
export function mergeDenied(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  let denying: Item | null = null;
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!;
    if (item.kind === 'not') denying = item;
    else if ((item.kind === 'or' || item.kind === 'and') && denying !== null) {
      out.push({ kind: 'stop', text: item.text }, denying);
      continue;
    } else if (item.kind === 'stop' || item.kind === 'with') denying = null;
    if (item.kind === 'not' && out.at(-1)?.kind === 'not') continue;
    out.push(item);
  }
  return out;
}

/** Reads what stands between the "or"s, and keeps what all of them say. */
export function alternatives(items: readonly Item[], lexicon: Lexicon, text: string): Parsed {
  const parts: Item[][] = [[]];
  for (const item of items) {
    if (item.kind === 'or') parts.push([]);
    else parts.at(-1)!.push(item);
  }
  const filled = parts.filter((part) => part.length > 0);
  if (filled.length < 2) return parseItems(filled[0] ?? [], lexicon);
  const main = lexicon.attribute.id;
  const read = filled.map((part) => parseItems(part, lexicon));
  const complete = read.find(({ named }) => named);
  const blank = read.some(
    ({ said, rest }) => said.size === 0 || rest.some(({ rule }) => rule !== 'ambiguous-word'),
  );
  if (blank) {
    const known = read.flatMap(({ said }) => said.get(main)?.value ?? []);
    const why =
      known.length === 0
        ? ''
        : ` (${[...new Set(known)].join(', ')} ${known.length === 1 ? 'is' : 'are'} known in it)`;
    return {
      said: new Map(),
      named: false,
      rest: [
        {
          text,
          rule: 'description-rest',
          why: `${quote(text)} names alternatives of which not all are understood${why}`,
        },
      ],
    };
  }
  // "open or semi-open twining": what one alternative leaves out, it shares with the one that is whole.
  const whole = read.map(({ said, named }) => {
    if (named || complete === undefined) return said;
    const own = [...said].filter(([id]) => id !== main);
    return new Map([...complete.said, ...own]);
  });
  const ids = [...new Set(whole.flatMap((said) => [...said.keys()]))];
  const said = new Map<string, Said>();
  for (const id of ids)
    said.set(
      id,
      shared(
        id,
        whole.map((one) => one.get(id)),
        lexicon,
      ),
    );
  return { said, rest: read.flatMap(({ rest }) => rest), named: complete !== undefined };
}

function shared(id: string, all: readonly (Said | undefined)[], lexicon: Lexicon): Said {
  const values = all.map((one) => one?.value ?? null);
  const known = [...new Set(values.filter((value) => value !== null))];
  const doubt = greatest(all.map((one) => one?.doubt ?? 0));
  const text = [...new Set(all.flatMap((one) => one?.text ?? []))].join(' or ');
  if (values.every((value) => value !== null && value === values[0])) return { ...all[0]!, doubt, text };
  const attribute = lexicon.facets.find((facet) => facet.id === id);
  if (attribute?.scale === 'ordinal' && !values.includes(null)) {
    // "open or semi-open" is a span of grades, as "3 or 4" is one of numbers.
    const span = (attribute.levels ?? []).filter((level) => known.includes(level));
    if (span.length === known.length) return { value: span.join(' or '), state: 'measured', doubt, text };
  }
  const tree =
    id === lexicon.attribute.id ? lexicon.vocabulary : lexicon.trees.get(attribute?.vocabulary ?? '');
  const held =
    tree === undefined || values.includes(null)
      ? null
      : known.reduce<string | null>(
          (a, b) => (a === null ? null : lowestCommon(tree, a, b)),
          known[0] ?? null,
        );
  return { value: held, state: held === null ? 'not-observed' : 'measured', doubt, text, several: known };
}
