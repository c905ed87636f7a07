import { describe, expect, it } from 'vitest';
import { asked, readPhrases, right } from './phrase-reading.ts';
import { TRADE_PHRASES } from './tables/trade-phrases.ts';

const results = readPhrases(TRADE_PHRASES);

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
