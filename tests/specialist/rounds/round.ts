import type { AttributeDefinition, Vocabulary } from '../../../src/attributes/definition.ts';
import { defaultRegister } from '../../../src/attributes/register.ts';
import { isWithin } from '../../../src/attributes/tree.ts';
import { readDescription } from '../../../src/cells/descriptions/read-description.ts';
import { type Result, readPhrases } from '../../cells/phrase-reading.ts';

/**
 * A round of cells as catalogues write them, with the reading that a specialist would give each, all decided before
 * any was read by the code. One line an attribute and a meaning, `attribute | meaning | cell ¦ cell ¦ …`; meanings are
 * written as in tests/cells/tables/trade-phrases.ts, of a structure as its term and facets (`twined o=open p=no`).
 */

const register = defaultRegister();
const structure = register.attributes.get('structure') as AttributeDefinition;

const vocabulary = register.vocabularies.get('structure') as Vocabulary;

const SIGNS: Readonly<Record<string, string>> = {
  o: 'spacingClass',
  e: 'engagement',
  a: 'activeSystem',
  s: 'rowSlant',
  n: 'strandsPerRow',
  p: 'pile',
  x: 'pileFixing',
  f: 'face',
  g: 'elementGrouping',
  t: 'twillPattern',
  u: 'supplementary',
  w: 'wrapping',
};
const WORDS: Readonly<Record<string, string>> = {
  'p=yes': 'present',
  'p=no': 'absent',
  'f=weft': 'weftFaced',
  'f=warp': 'warpFaced',
  'a=weft': 'weftActive',
  'a=warp': 'warpActive',
  'g=one': 'pairedOne',
  'g=both': 'pairedBoth',
};

export interface Outcome {
  readonly attribute: string;
  readonly text: string;
  readonly means: string;
  readonly got: string;
  readonly verdict: 'right' | 'asked' | 'wrong';
}

export function outcomes(round: string): readonly Outcome[] {
  return round
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [attribute = '', means = '', texts = ''] = line.split(' | ').map((part) => part.trim());
      return texts
        .split('¦')
        .map((text) => text.trim())
        .map((text) => (attribute === 'structure' ? described(text, means) : simple(text, attribute, means)));
    });
}

function simple(text: string, attribute: string, means: string): Outcome {
  const [one] = readPhrases([{ group: '', attribute, means, texts: text.replaceAll('|', ' ') }]) as [Result];
  // Sizes are written in centimetres and kept in millimetres.
  return { attribute, text, means, got: one.got, verdict: verdictOn(one.got, means) };
}

function verdictOn(got: string, means: string): Outcome['verdict'] {
  if (got === means) return 'right';
  if (got.includes('ask')) return 'asked';
  const about =
    means.startsWith('~') && got.startsWith('~')
      ? Math.abs(Number(got.slice(1)) / Number(means.slice(1)) - 1) < 0.12
      : false;
  return about ? 'right' : 'wrong';
}

/** Right to the last facet; asked where something of it, and nothing else, was read and the rest is a question. */
function described(text: string, means: string): Outcome {
  const { main, facets, rest } = readDescription(text, structure, register, { decimal: '.' })!;
  const [said = '', ...signs] = means.split(' ');
  const [, term = '', doubt = ''] = /^(.*?)(\?*)$/u.exec(said) ?? [];
  const meant = new Map(
    signs.map((sign) => [SIGNS[sign[0]!]!, WORDS[sign] ?? sign.slice(2)] as [string, string]),
  );
  const read = new Map(
    [...facets].flatMap(([id, one]): [string, string][] => {
      if (one.kind === 'numeric') return [[id, String(one.low)]];
      return one.kind === 'term' && one.term !== null ? [[id, one.term]] : [];
    }),
  );
  const marks = { certain: '', probable: '?', possible: '??', indeterminate: '???' };
  const own = main.kind === 'term' ? main.term : null;
  const doubted = own === null || main.kind !== 'term' ? '' : marks[main.certainty];
  const asks = rest.length > 0 || main.notes.some(({ level }) => level === 'not-understood');
  const got = `${own ?? '-'}${doubted} ${[...read].map(([id, value]) => `${id}=${value}`).join(' ')}${asks ? ' ask' : ''}`;
  const outcome = (verdict: Outcome['verdict']): Outcome => ({
    attribute: 'structure',
    text,
    means,
    got,
    verdict,
  });
  if (means === 'not-observed') {
    const empty = own === null && main.state === 'not-observed' && read.size === 0;
    return outcome(asks ? 'asked' : empty ? 'right' : 'wrong');
  }
  if (means === 'ask') return outcome(asks ? 'right' : 'wrong');
  // A broader term with a question is less than was meant, and nothing else.
  const broader = own !== null && asks && isWithin(vocabulary, term, own);
  const less = (id: string, value: string): boolean => {
    const { vocabulary: name } = register.attributes.get(id) ?? {};
    const terms = name === undefined ? undefined : register.vocabularies.get(name);
    const said = meant.get(id);
    return asks && terms !== undefined && said !== undefined && isWithin(terms, said, value);
  };
  const nothingElse =
    (own === null || own === term || broader) &&
    [...read].every(([id, value]) => meant.get(id) === value || less(id, value));
  if (!nothingElse) return outcome('wrong');
  const whole = (own ?? '-') === term && doubted === doubt && read.size === meant.size;
  if (whole && !asks) return outcome('right');
  return outcome(asks ? 'asked' : 'wrong');
}
