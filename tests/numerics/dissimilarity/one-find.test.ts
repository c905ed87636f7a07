import { expect, it } from 'vitest';
import { dissimilaritiesTo } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../../src/numerics/dissimilarity/prepare.ts';
import {
  codeValue,
  type DissimilaritySpec,
  quantityValue,
  type RecordValue,
  type Variable,
} from '../../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';

/** Enough records for the kernel that compares two pairs at a time. */
const N = 20_001;
const random = createRandom(3);
const gappy = (value: () => number, share: number) =>
  Float64Array.from({ length: N }, () => (random.next() < share ? Number.NaN : value()));

const numbers = [0.1, 0, 0.2].map((share, block): Variable => {
  const values = gappy(() => 10 * random.next(), share);
  return { kind: 'quantity', low: values, high: values, range: 10, block: block % 2, weight: 1 + block };
});
const kinds = [0.1, 0].map((share): Variable => {
  const codes = Int32Array.from(
    gappy(() => random.integer(4), share),
    (code) => (Number.isNaN(code) ? -1 : code),
  );
  const between = Float64Array.from({ length: 16 }, (_, at) => (Math.floor(at / 4) === at % 4 ? 0 : 1));
  return { kind: 'kinds', codes, between, levels: 4, block: 2, weight: 1 };
});
const spec: DissimilaritySpec = {
  variables: [...numbers, ...kinds],
  blockWeights: [1, 2, 0.5],
  mode: 'blocks',
  intervals: 'midpoint',
  minimumOverlap: 0,
};
const FINDS: Readonly<Record<string, readonly RecordValue[]>> = {
  'exact values': [quantityValue(3), quantityValue(7.5), quantityValue(0.1), codeValue(2), codeValue(0)],
  'ranges, and beyond the sample': [
    quantityValue(3, 4),
    quantityValue(17),
    quantityValue(-5, 1),
    codeValue(3),
    codeValue(1),
  ],
  'a value unknown': [
    quantityValue(3),
    quantityValue(Number.NaN),
    quantityValue(1),
    codeValue(-1),
    codeValue(1),
  ],
};

it.each(Object.entries(FINDS))(
  'one find against many is the same to the last bit, asked again or not: %s',
  (_, find) => {
    const prepared = prepareComparison(spec);
    const first = dissimilaritiesTo(prepared, find);
    for (let again = 0; again < 3; again++) expect(dissimilaritiesTo(prepared, find)).toEqual(first);
  },
);

it('other values asked of the same comparison do not meet those asked before', () => {
  const prepared = prepareComparison(spec);
  const [one, other] = [FINDS['exact values'], FINDS['ranges, and beyond the sample']];
  const plain = dissimilaritiesTo(prepareComparison(spec), other);
  dissimilaritiesTo(prepared, one);
  dissimilaritiesTo(prepared, one);
  expect(dissimilaritiesTo(prepared, other)).toEqual(plain);
});
