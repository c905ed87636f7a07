import type { Unavailable } from '../foundation/unavailable.ts';

export interface Kappa {
  /** 1 for full agreement, 0 for as much as chance gives, below 0 for less. */
  readonly kappa: number;
  /** Large-sample standard error. */
  readonly standardError: number;
  /** Share that agrees, and the share that would by chance. */
  readonly agreement: number;
  readonly chance: number;
  readonly n: number;
}

/**
 * How far do two judgements of the same records agree beyond chance? Cohen's kappa (Cohen 1960, Educ.
 * Psychol. Meas. 20:37) with the standard error of Fleiss, Cohen & Everitt 1969 (Psychol. Bull. 72:323,
 * eq. 13). Unavailable without records, or where both judgements know one kind alone.
 *
 * @param counts counts[first judgement][second judgement], square.
 */
export function cohenKappa(counts: readonly (readonly number[])[]): Kappa | Unavailable {
  const n = counts.flat().reduce((sum, count) => sum + count, 0);
  if (n === 0) return { why: 'there is no record that both judge' };
  const share = (i: number, j: number) => counts[i][j] / n;
  const places = counts.map((_, place) => place);
  const rows = places.map((i) => places.reduce((sum, j) => sum + share(i, j), 0));
  const columns = places.map((j) => places.reduce((sum, i) => sum + share(i, j), 0));
  const agreement = places.reduce((sum, i) => sum + share(i, i), 0);
  const chance = places.reduce((sum, i) => sum + rows[i] * columns[i], 0);
  if (chance === 1) return { why: 'both judgements know one kind alone' };
  let spread = 0;
  for (const i of places)
    for (const j of places) {
      const both =
        i === j
          ? 1 - chance - (columns[i] + rows[i]) * (1 - agreement)
          : (columns[i] + rows[j]) * (1 - agreement);
      spread += share(i, j) * both * both;
    }
  const off = agreement * chance - 2 * chance + agreement;
  const rest = (1 - chance) * (1 - chance);
  return {
    kappa: (agreement - chance) / (1 - chance),
    standardError: Math.sqrt(Math.max(0, spread - off * off) / (n * rest * rest)),
    agreement,
    chance,
    n,
  };
}
