import { describe, expect, it } from 'vitest';
import type { AttributeDefinition } from '../../src/attributes/definition.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import type { CellContext } from '../../src/cells/context.ts';
import { readCell } from '../../src/cells/read-cell.ts';
import type { Reading } from '../../src/cells/reading.ts';
import { splitCell } from '../../src/cells/split-cell.ts';
import { TRADE_PHRASES } from './tables/trade-phrases.ts';

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
  };
  return readCell(text, attribute, context);
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
  const split = splitCell(text, { decimal: '.' });
  if (split === null || split.parts.length !== 2) return 'ask';
  const parts = split.parts.map((part, at) => inShort(readOne(part, pair[at] as string)));
  // Sizes are given in cm and kept in mm.
  return (
    attribute === 'sizes' ? parts.map((part) => (part === 'ask' ? part : String(Number(part) / 10))) : parts
  ).join(' & ');
}

interface Result {
  readonly group: string;
  readonly text: string;
  readonly means: string;
  readonly got: string;
}

const results = TRADE_PHRASES.flatMap(({ group, attribute, means, texts }): Result[] =>
  texts.split('|').map((text) => ({ group, text, means, got: read(text, attribute) })),
);
/** "About" is right whatever its width; its middle may be off by a little. */
const right = ({ means, got }: Result): boolean =>
  got === means ||
  (means.startsWith('~') &&
    got.startsWith('~') &&
    Math.abs(Number(got.slice(1)) / Number(means.slice(1)) - 1) < 0.12);
const asked = ({ got }: Result): boolean => got.includes('ask');

describe('the trade’s phrases', () => {
  it('are at least 400, of many classes', () => {
    expect(results.length).toBeGreaterThanOrEqual(400);
    expect(new Set(results.map(({ text, means }) => `${text} ${means}`)).size).toBeGreaterThanOrEqual(400);
  });

  it('none is read as what it does not say', () => {
    expect(results.filter((one) => !right(one) && !asked(one))).toEqual([]);
  });

  it('nine in ten are read as they are meant, the others are asked about', () => {
    const missed = results.filter((one) => !right(one));
    expect(results.filter(right).length / results.length, JSON.stringify(missed)).toBeGreaterThanOrEqual(0.9);
  });
});
