import { describe, expect, it } from 'vitest';
import { readPrinted } from '../../../src/analyses/claims/reading/printed-text.ts';
import type { Quantity } from '../../../src/analyses/claims/reading/terms.ts';
import { numberOf } from '../../../src/numerics/printed/printed-number.ts';

/** What is read of a print: "t=2.31 df=18 p=0.033". Common practice of papers and programs, no source. */
function read(quantity: Quantity, text: string): string | null {
  const found = readPrinted(text, quantity);
  if (found === null) return null;
  const parts = found.parts.map(
    ({ quantity: said, method, values }) =>
      `${said === 'statistic' || said === 'effect' || said === 'correlation' ? (method ?? said) : said}` +
      values.map(({ relation, number }) => `${relation}${numberOf(number)}`).join(''),
  );
  return [...parts, ...found.unused.map((word) => `?${word}`)].join(' ');
}

describe('one grammar of test reports', () => {
  it.each<[Quantity, string, string]>([
    ['statistic', 't(18) = 2.31, p = .33, d = 0.8', 't=2.31 df=18 p=0.33 cohen-d=0.8'],
    ['statistic', 't(17.776) = -1.8608, p = 0.07939', 't=-1.8608 df=17.776 p=0.07939'],
    ['statistic', 't = −1.8608, df = 17.776, p-value = 0.07939', 't=-1.8608 df=17.776 p=0.07939'],
    ['statistic', 't18 = 2,31; P = 0,033', 't=2.31 df=18 p=0.033'],
    ['statistic', 'U(12, 10) = 31, p = .06', 'U=31 n=12 n=10 p=0.06'],
    ['statistic', 'U = 31, Z = –1.9, n1 = 12, n2 = 10, p = .06', 'U=31 z=-1.9 n=12 n=10 p=0.06'],
    ['statistic', 'F(2,27) = 4.5, p < .05', 'F=4.5 df=2=27 p<0.05'],
    ['statistic', 'F(1,5; 29,6) = 4,5; p = 0,03', 'F=4.5 df=1.5=29.6 p=0.03'],
    ['statistic', 'χ²(4, N = 60) = 9.9, p = .04, V = .2', 'chi-squared=9.9 df=4 n=60 cramer-v=0.2 p=0.04'],
    ['statistic', 'Kruskal-Wallis chi-squared = 7.1, df = 2, p-value = 0.03', 'H=7.1 df=2 p=0.03'],
    ['statistic', 'G = 9.9, df = 4, n.s.', 'G=9.9 df=4 p>0.05'],
    ['statistic', 'V = 12, n = 14, p = .03', 'signed-rank=12 n=14 p=0.03'],
    ['correlation', 'r_s(18) = .45, p = .046', 'rho=0.45 df=18 p=0.046'],
    ['correlation', 'r = .45**', 'r=0.45 p<0.05'],
    ['statistic', 'OR = 2.4, 95% CI 1.1–5.2, p = .02', 'odds-ratio=2.4 p=0.02 low=1.1 high=5.2'],
    ['statistic', 't(18) = 2.31, p = .033, AUC = .7', 't=2.31 df=18 p=0.033 ?AUC ?7'],
    ['p', 'p = .03 (one-tailed)', 'p=0.03'],
    ['p', '< .001', 'p<0.001'],
    ['p', 'ns', 'p>0.05'],
    ['share', '34.3 % (12/35)', 'share=34.3 count=12 n=35'],
    ['count', '12 (34 %)', 'count=12 share=34'],
    ['range', '1200–1150 BC', 'min=-1199 max=-1149'],
    ['mean', '5.2 ± 1.4 (n = 12)', 'mean=5.2 sd=1.4 n=12'],
    ['n', '1,234', 'n=1234'],
    ['mean', '12.3†', 'mean=12.3 ?†'],
  ])('%s: %s', (quantity, text, expected) => {
    expect(read(quantity, text)).toBe(expected);
  });

  it('keeps both numbers where a mark may part thousands or decimals, and asks the document first', () => {
    const value = (text: string, mark: '.' | ',' | null) =>
      readPrinted(text, 'mean', { mark })?.parts[0].values[0];
    expect(value('1,234', null)?.otherwise).toBeDefined();
    expect(numberOf(value('1,234', '.')?.number ?? { digits: 0n, decimals: 0 })).toBe(1234);
    expect(numberOf(value('1,234', ',')?.number ?? { digits: 0n, decimals: 0 })).toBe(1.234);
  });
});
