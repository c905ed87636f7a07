import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { foldText, lookupKey } from '../../attributes/folding.ts';
import { matchAttribute, splitHeader } from '../../attributes/matching.ts';
import { isKnownHeader } from '../layout/cell-shapes.ts';

/** Two columns that hold the ends of one interval: "from" and "to", "spacing min" and "spacing max". */

export type Bound = 'low' | 'high';

const LOW = words(
  'from, min, minimum, minimal, low, lower, start, begin, earliest, von, ab, mindestens, de, debut, da, minimo, desde, inicio, fra, mindst, tpq',
);
const HIGH = words(
  'to, max, maximum, maximal, high, upper, end, until, latest, bis, hochstens, a, au, fin, massimo, fino, maximo, hasta, til, hojst, taq',
);

function words(list: string): ReadonlySet<string> {
  return new Set(list.split(',').map((word) => lookupKey(word)));
}

export interface BoundColumn {
  readonly attribute: AttributeDefinition;
  readonly bound: Bound;
  readonly via: string;
}

/**
 * Finds such pairs among the headers. Both ends must be there, and what is left of each header without
 * its bound word must name the same attribute exactly; nothing left, or an era, means the date.
 */
export function boundPairs(
  headers: readonly string[],
  alternatives: readonly string[],
  register: Register,
  settled: ReadonlySet<number>,
): ReadonlyMap<number, BoundColumn> {
  const ends = new Map<string, Partial<Record<Bound, { index: number; via: string }>>>();
  for (const index of headers.keys()) {
    if (settled.has(index)) continue;
    for (const header of new Set([headers[index]!, alternatives[index]!])) {
      const found = boundOf(header, register);
      if (found === null) continue;
      const pair = ends.get(found.attribute) ?? {};
      pair[found.bound] ??= { index, via: found.via };
      ends.set(found.attribute, pair);
      break;
    }
  }
  const pairs = new Map<number, BoundColumn>();
  for (const [id, { low, high }] of ends) {
    const attribute = register.attributes.get(id);
    if (attribute === undefined || low === undefined || high === undefined) continue;
    if (attribute.scale !== 'ratio' && attribute.scale !== 'interval') continue;
    pairs.set(low.index, { attribute, bound: 'low', via: low.via });
    pairs.set(high.index, { attribute, bound: 'high', via: high.via });
  }
  return pairs;
}

function boundOf(
  header: string,
  register: Register,
): { attribute: string; bound: Bound; via: string } | null {
  if (header.length > 80 || isKnownHeader(header, register)) return null;
  const { name, unit } = splitHeader(header);
  const parts = name.split(/[\s_.,:;/-]+/).filter((word) => word !== '');
  for (const at of new Set([0, parts.length - 1])) {
    const word = lookupKey(parts[at] ?? '');
    const bound: Bound | null = LOW.has(word) ? 'low' : HIGH.has(word) ? 'high' : null;
    if (bound === null) continue;
    const rest = parts.filter((_, i) => i !== at).join(' ');
    if (rest === '' || ERA_OR_YEAR.test(foldText(rest))) {
      return register.attributes.has('date') ? { attribute: 'date', bound, via: word } : null;
    }
    const match = matchAttribute(unit === undefined ? rest : `${rest} (${unit})`, register);
    if (match.kind === 'exact') return { attribute: match.id, bound, via: `${match.via}, ${word}` };
  }
  return null;
}

const ERA_OR_YEAR =
  /^(?:year|years|date|dates|bc|bce|ad|ce|b c|a d|v chr|n chr|av j c|f kr|jahr|jahre|datierung|annee|anno|ano|ar)(?: (?:bc|bce|ad|ce|b c|a d))?$/;
