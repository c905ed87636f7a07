import type { PrintedFigure } from '../reading/claim.ts';

/** p values are worth two digits more than most figures. */
export function finer(p: PrintedFigure): PrintedFigure {
  const [value] = p.values;
  return {
    ...p,
    values: [{ ...value, number: { ...value.number, decimals: Math.max(2, value.number.decimals) } }],
  };
}
