import type { AttributeDefinition } from '../../src/attributes/definition.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import type { CellContext } from '../../src/cells/context.ts';
import { readFacetCell } from '../../src/cells/descriptions/read-facet-cell.ts';
import { readCell } from '../../src/cells/read-cell.ts';
import type { Reading } from '../../src/cells/reading.ts';
import { sizeWords } from '../../src/cells/size-words.ts';
import { splitCell } from '../../src/cells/split-cell.ts';
import type { Phrases } from './tables/trade-phrases.ts';

/** Reading a bed of phrases, and holding what was read against what each means. */

const register = defaultRegister();

/** Pairs: the attributes that the parts of one cell feed. */
const PAIRS: Readonly<Record<string, readonly [string, string]>> = {
  threads: ['density1', 'density2'],
  twists: ['twist1', 'twist2'],
  sizes: ['length', 'width'],
};

function readOne(text: string, id: string): Reading {
  const attribute = register.attributes.get(id) as AttributeDefinition;
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  const context: CellContext = {
    decimal: /\d,\d/u.test(text) ? ',' : '.',
    ...(attribute.unit === undefined
      ? {}
      : { unit: id === 'length' || id === 'width' ? 'cm' : attribute.unit }),
    ...(vocabulary === undefined ? {} : { vocabulary }),
    // What describes several sides at once is parted by the words of the register.
    ...(id === 'structure' ? { register } : {}),
  };
  return attribute.facet === undefined
    ? readCell(text, attribute, context)
    : readFacetCell(text, attribute, context, register);
}

function inShort(reading: Reading): string {
  if (reading.notes.some(({ level }) => level === 'not-understood')) return 'ask';
  if (reading.kind === 'text') return reading.text;
  if (reading.state === 'not-observed' || reading.state === 'not-applicable') return 'not-observed';
  if (reading.kind === 'term') {
    if (reading.term === null) return reading.state;
    return (
      reading.term + { certain: '', probable: '?', possible: '??', indeterminate: '???' }[reading.certainty]
    );
  }
  if (reading.state === 'absent') return 'absent';
  const about = reading.state === 'approximate' ? '~' : '';
  const { low, high } = reading;
  if (about !== '') return `~${String((low + high) / 2)}`;
  if (low === high) return String(low);
  return high === Infinity ? `${low}-` : `${low}-${high}`;
}

function read(text: string, attribute: string): string {
  const pair = PAIRS[attribute];
  if (pair === undefined) return inShort(readOne(text, attribute));
  const sized = attribute === 'sizes' ? sizeWords(text) : { text, each: '' };
  const split = splitCell(sized.text, { decimal: '.' });
  if (split === null || split.parts.length !== 2) return 'ask';
  const parts = split.parts.map((part, at) => inShort(readOne(part, pair[at] as string)));
  // Sizes are given in cm and kept in mm.
  return (
    attribute === 'sizes' ? parts.map((part) => (part === 'ask' ? part : String(Number(part) / 10))) : parts
  ).join(' & ');
}

export interface Result {
  readonly group: string;
  readonly text: string;
  readonly means: string;
  readonly got: string;
}

export function readPhrases(bed: readonly Phrases[]): readonly Result[] {
  return bed.flatMap(({ group, attribute, means, texts }): Result[] =>
    texts.split('|').map((text) => ({ group, text, means, got: read(text, attribute) })),
  );
}

/** "About" is right whatever its width; its middle may be off by a little. */
export const right = ({ means, got }: Result): boolean =>
  got === means ||
  (means.startsWith('~') &&
    got.startsWith('~') &&
    Math.abs(Number(got.slice(1)) / Number(means.slice(1)) - 1) < 0.12);
export const asked = ({ got }: Result): boolean => got.includes('ask');
