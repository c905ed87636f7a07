import { normalQuantileUpper } from '../foundation/distributions.ts';

/**
 * The least Cliff's delta that two samples wholly apart leave open. Drawing such samples again tells nothing, since
 * every draw is as far apart; but a score interval of the chance that one value exceeds another does (Newcombe 2006,
 * Stat. Med. 25:559, method 5, from memory): the chance at which 1 lies so many standard errors away, the error being
 * that at this chance, of exponential variables (Hanley & McNeil 1982, Radiology 143:29). The most is delta 1.
 */
export function apartDeltaLimit(n1: number, n2: number, confidence: number): number {
  const z = normalQuantileUpper((1 - confidence) / 2);
  const half = (n1 + n2) / 2 - 1;
  const variance = (chance: number) =>
    (chance * (1 - chance) * (1 + half * ((1 - chance) / (2 - chance) + chance / (1 + chance)))) / (n1 * n2);
  let [low, high] = [0.5, 1];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (1 - middle > z * Math.sqrt(variance(middle))) low = middle;
    else high = middle;
  }
  return low + high - 1;
}
