import type { PrintedFigure } from '../reading/claim.ts';
import type { Quantity } from '../reading/terms.ts';

/** What the row of a claims file must say for a test to be computed again. */
const NEEDED = {
  measure: 'the measure under "attribute"',
  groups: 'the measure under "attribute" and both groups, under "select" and "versus"',
  kinds: 'two attributes, the measure and, after ";", the groups; or both groups under "select" and "versus"',
  crossed: 'two attributes parted by ";", or one and both groups under "select" and "versus"',
  pair: 'two attributes parted by ";"',
  attribute: 'the attribute whose kinds are counted, under "attribute"',
} as const;

/** What is missing of that, in a sentence without its end: "H needs two attributes …; it has only rowGap". */
export function lacking(figure: PrintedFigure, needed: keyof typeof NEEDED): { readonly why: string } {
  const { attributes, versus, method, quantity } = figure;
  const has = [...attributes, ...(versus.length > 0 ? ['both groups'] : [])];
  const given = has.length === 0 ? 'neither is there' : `there is only ${has.join(' and ')}`;
  const one = needed === 'measure' || needed === 'attribute';
  return { why: `${method ?? named(quantity)} needs ${NEEDED[needed]}; ${one ? 'none is there' : given}` };
}

function named(quantity: Quantity): string {
  const plain: Partial<Record<Quantity, string>> = {
    low: 'an interval',
    high: 'an interval',
    p: 'p',
    effect: 'an effect size',
    iqr: 'the range of the quartiles',
  };
  return plain[quantity] ?? `a ${quantity}`;
}
