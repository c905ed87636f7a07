import { describe, expect, it } from 'vitest';
import { type Condensed, dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { fitLabelLikelihood, labelShares } from '../../../src/numerics/tests/label-likelihood.ts';
import { comparedTable, labelledTables } from '../../simulations/parts/labelled-tables.ts';

const onLine = (places: readonly number[]): Condensed => ({
  n: places.length,
  values: Float64Array.from(places.flatMap((a, i) => places.slice(i + 1).map((b) => Math.abs(a - b)))),
});
const each = (n: number) => Array.from({ length: n }, (_, i) => i);
const rightOf = (leftOut: readonly { right: boolean }[]) => leftOut.filter(({ right }) => right).length;

describe('the order of labels by likelihood', () => {
  it.each(Object.entries(labelledTables))(
    '%s: right, leaving one out, as often as the neighbours of scikit-learn but for two standard errors',
    (_, table) => {
      const { spec, groups } = comparedTable(table);
      const label = new Array<number>(table.labels.length);
      groups.forEach(({ rows }, at) => {
        for (const row of rows) label[row] = at;
      });
      const { leftOut } = fitLabelLikelihood(dissimilarities(spec), {
        label,
        labels: groups.length,
        kin: each(label.length),
      });
      const n = label.length;
      expect(leftOut.length).toBe(n);
      const outside = Math.max(table.accuracy.nearest.right, table.accuracy['five nearest'].right) / n;
      const error = Math.sqrt((outside * (1 - outside)) / n);
      expect(rightOf(leftOut) / n).toBeGreaterThan(outside - 2 * error);
      // Dissimilarities are scaled otherwise than there, so that the plain neighbour is near, not the same.
      const plain = leftOut.filter(({ nearestRight }) => nearestRight).length / n;
      expect(Math.abs(plain - table.accuracy.nearest.right / n)).toBeLessThan(0.04);
    },
  );

  it('is right no more often than a guess where labels are dealt out at random', () => {
    let [right, tried] = [0, 0];
    for (let table = 0; table < 40; table++) {
      const random = createRandom(table);
      const label = each(60).map(() => random.integer(3));
      const fit = fitLabelLikelihood(onLine(each(60).map(() => random.next())), {
        label,
        labels: 3,
        kin: each(60),
      });
      right += rightOf(fit.leftOut);
      tried += fit.leftOut.length;
    }
    // 2,400 records, a third by chance: standard error below 0.02 for records that hang together
    expect(right / tried).toBeGreaterThan(0.27);
    expect(right / tried).toBeLessThan(0.38);
  });

  it('does not favour the label of which the catalogue has more', () => {
    const random = createRandom(3);
    // Both spread over the same stretch, ten times as many of the first.
    const places = [...each(200), ...each(20)].map(() => random.next());
    const label = [...each(200).map(() => 0), ...each(20).map(() => 1)];
    const fit = fitLabelLikelihood(onLine(places), { label, labels: 2, kin: each(220) });
    let second = 0;
    for (let find = 0; find < 200; find++) {
      const at = random.next();
      const shares = labelShares(
        { ...fit, width: 1, sharpness: 1 },
        places.map((place) => Math.abs(place - at)),
      );
      second += shares[1] / 200;
    }
    expect(second).toBeGreaterThan(0.35);
    expect(second).toBeLessThan(0.6);
  });

  it('gives shares that sum to one, most to the label about the record, and none where nothing is comparable', () => {
    const fit = fitLabelLikelihood(onLine([0, 0.1, 0.2, 5, 5.1, 5.2, 9]), {
      label: [0, 0, 0, 1, 1, 1, 2],
      labels: 3,
      kin: each(7),
    });
    const shares = labelShares(fit, [0.1, 0, 0.1, 4.9, 5, 5.1, Number.NaN]);
    expect(shares[0] + shares[1]).toBeCloseTo(1, 12);
    expect(shares[0]).toBeGreaterThan(0.6);
    expect(shares[2]).toBeNaN();
    // The one record of the third label cannot be left out.
    expect(fit.leftOut.map(({ record }) => record)).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('leaves kin out together: what only kin share is no help', () => {
    const random = createRandom(9);
    // Twelve sites of five, each at a place of its own; a label of six sites has no place in common.
    const site = each(60).map((i) => Math.floor(i / 5));
    const centres = each(12).map(() => 100 * random.next());
    const within = onLine(site.map((one) => centres[one] + 0.01 * random.next()));
    const label = site.map((one) => one % 2);
    const alone = fitLabelLikelihood(within, { label, labels: 2, kin: each(60) });
    const together = fitLabelLikelihood(within, { label, labels: 2, kin: site });
    expect(rightOf(alone.leftOut)).toBe(60);
    expect(rightOf(together.leftOut)).toBeLessThan(45);
    expect(dissimilarityAt(within, 0, 1)).toBeLessThan(0.011);
  });
});
