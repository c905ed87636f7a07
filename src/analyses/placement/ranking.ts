import { wilsonLimits } from '../../numerics/describing/wilson.ts';
import {
  dissimilarities,
  dissimilaritiesTo,
  pickRecords,
} from '../../numerics/dissimilarity/dissimilarity.ts';
import { type PreparedComparison, prepareComparison } from '../../numerics/dissimilarity/prepare.ts';
import type { DissimilaritySpec, RecordValue } from '../../numerics/dissimilarity/variables.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import {
  fitLabelLikelihood,
  type LabelLikelihood,
  labelShares,
} from '../../numerics/tests/label-likelihood.ts';
import type { Unavailable } from '../contract.ts';
import type { LabelAttribute } from './labels.ts';
import type { LabelRanking } from './sets-found.ts';
import { drawRows } from './typicality.ts';

/** The records of one attribute's labels, ready to say which label is likeliest for a find. */
export interface Ranker {
  readonly attribute: LabelAttribute;
  readonly by: 'records' | 'sites';
  readonly prepared: PreparedComparison;
  readonly fit: LabelLikelihood;
}

/** Most records of an attribute that the order of its labels rests on; leaving out costs their square. */
const MOST = 500;
/** Fewest records left out from which it is said how often the order is right. */
const FEWEST = 8;
/** Certainty with which an order must be right more often than a guess. */
const CERTAINTY = 0.9;

/**
 * Learns the order of an attribute's labels from records alone, compared by the variables of `spec`.
 *
 * @param itemOf item of each record: records of one item are left out together, as are those of a site where the find
 *   may come from another.
 */
export function rankerOf(
  attribute: LabelAttribute,
  spec: DissimilaritySpec,
  itemOf: (row: number) => string,
  random: Random,
): Ranker | Unavailable {
  const { labels } = attribute;
  if (labels.length < 2) return { why: 'there is one label alone' };
  const most = Math.max(2, Math.floor(MOST / labels.length));
  const bySites = labels.some(({ sites }) => sites !== null);
  const kinOf = new Map<string, number>();
  const numbered = (key: string) => kinOf.get(key) ?? kinOf.set(key, kinOf.size).size - 1;
  const records = labels.flatMap(({ rows, sites }, label) => {
    const siteOf = new Map((sites ?? []).flatMap((own, site) => own.map((row) => [row, site] as const)));
    return drawRows(rows, most, random.stream(`${attribute.id}/${label}`)).map((row) => ({
      row,
      label,
      kin: numbered(sites === null ? `item ${itemOf(row)}` : `site ${label} ${siteOf.get(row)}`),
    }));
  });
  const own = pickRecords(
    spec,
    records.map(({ row }) => row),
  );
  return {
    attribute,
    by: bySites ? 'sites' : 'records',
    prepared: prepareComparison(own),
    fit: fitLabelLikelihood(dissimilarities(own), {
      label: records.map(({ label }) => label),
      labels: labels.length,
      kin: records.map(({ kin }) => kin),
    }),
  };
}

/** The labels in order of likelihood for the find, and how often such an order is right. */
export function rankingOf(ranker: Ranker, record: readonly RecordValue[]): LabelRanking {
  const { attribute, by, fit, prepared } = ranker;
  const shares = labelShares(fit, dissimilaritiesTo(prepared, record));
  const order = attribute.labels
    .map(({ label }, place) => ({ label, share: shares[place] }))
    .filter(({ share }) => !Number.isNaN(share))
    .sort((a, b) => b.share - a.share || (a.label < b.label ? -1 : 1));
  return { attribute: attribute.label, by, order, accuracy: accuracyOf(fit) };
}

function accuracyOf({ leftOut, label, kin }: LabelLikelihood): LabelRanking['accuracy'] {
  const n = leftOut.length;
  const right = leftOut.filter((one) => one.right).length;
  const labels = new Set(leftOut.map(({ record }) => label[record])).size;
  if (n < FEWEST || labels < 2)
    return { why: `too few labels are carried by more than one to leave any out (${n} records)` };
  // Records of one kin fare alike: as many kins as there are, not as many records, speak for the share.
  const kins = new Set(leftOut.map(({ record }) => kin[record])).size;
  const limits = wilsonLimits((right / n) * kins, kins, CERTAINTY);
  return {
    leftOut: n,
    right,
    nearestRight: leftOut.filter((one) => one.nearestRight).length,
    labels,
    verdict: !('why' in limits) && limits.low > 1 / labels ? 'better than a guess' : 'no better than a guess',
  };
}
