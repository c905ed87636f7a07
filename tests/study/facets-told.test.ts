import { describe, expect, it } from 'vitest';
import { termAt } from '../../src/fragments/accessors.ts';
import { compareRecords } from '../../src/fragments/comparison/comparison.ts';
import { dissimilarityAt } from '../../src/numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { explainPair } from '../../src/numerics/dissimilarity/explain-pair.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { checkStudy } from '../../src/study/load.ts';
import { type Prepared, prepareStudy } from '../../src/study/prepare.ts';
import { analyseOne } from '../../src/study/run-study.ts';

/**
 * The same planted twinings in catalogues that each tell other sides of them: what one never says is a gap there, and no
 * difference between finds or sites.
 */

interface Planted {
  readonly openness: 'open' | 'close';
  readonly slant: 'S' | 'Z';
  readonly engagement: 'simple' | 'diagonal';
  readonly pile: boolean;
}

const random = createRandom(11);
const PLANTED: readonly Planted[] = Array.from({ length: 40 }, () => ({
  openness: random.next() < 0.6 ? 'open' : 'close',
  slant: random.next() < 0.7 ? 'Z' : 'S',
  engagement: random.next() < 0.4 ? 'diagonal' : 'simple',
  pile: random.next() < 0.3,
}));

type Habit = (find: Planted) => string;
const opennessAndSlant: Habit = ({ openness, slant }) => `${openness} twining, rows ${slant}`;
const engagementAndPile: Habit = ({ engagement, pile }) =>
  `${engagement} twining, ${pile ? 'tufted' : 'untufted'}`;
const nameOnly: Habit = () => 'twining';
const all: Habit = ({ openness, engagement, pile }) =>
  `${openness} ${engagement} twining ${pile ? 'with pile' : 'without pile'}`;

function catalogues(
  habits: Readonly<Record<string, Habit>>,
  more: object = {},
  others: readonly string[] = [],
): Prepared {
  const files = new Map<string, Uint8Array>();
  for (const [site, habit] of Object.entries(habits)) {
    const rows = [...PLANTED.map(habit), ...others].map((text, i) => `${site}-${i},${site},"${text}"`);
    files.set(`${site}.csv`, new TextEncoder().encode(`Find no.,Site,Structure\n${rows.join('\n')}\n`));
  }
  const study = checkStudy(
    { title: 't', sources: [...files.keys()].map((file) => ({ file })), witness: { is: 'row' }, ...more },
    'study.json',
  );
  return prepareStudy(study, files);
}

const compared = ({ fragments, register }: Prepared) =>
  compareRecords(fragments, register, {
    of: ['structure'],
    weights: {},
    attributeWeights: {},
    mode: 'blocks',
    intervals: 'midpoint',
    ordinal: 'ranks',
    scaling: 'range',
    minimumOverlap: 0,
  });

const kindsOf = ({ fragments }: Prepared) => {
  const column = fragments.columns.get('kind');
  return column?.kind === 'term'
    ? Array.from({ length: fragments.rows }, (_, row) => termAt(column, row))
    : [];
};

describe('catalogues that tell different sides of the same finds', () => {
  it.each([
    ['openness and slant, engagement and pile', { Holm: opennessAndSlant, Ness: engagementAndPile }],
    ['openness and slant, the name alone', { Holm: opennessAndSlant, Ness: nameOnly }],
    ['every side, the name alone', { Holm: all, Ness: nameOnly }],
  ])('%s: no distance between identical finds', (_, habits) => {
    const { spec } = compared(catalogues(habits));
    const matrix = dissimilarities(spec);
    for (const i of PLANTED.keys()) expect(dissimilarityAt(matrix, i, i + PLANTED.length)).toBe(0);
  });

  it('finds that differ in what both tell are apart, and why shows the part of each facet', () => {
    const prepared = catalogues({ Holm: all, Ness: all });
    const { spec, attributes } = compared(prepared);
    const open = PLANTED.findIndex(({ openness }) => openness === 'open');
    const other = PLANTED.findIndex(
      ({ openness, engagement, pile }) =>
        openness === 'close' && engagement === PLANTED[open]!.engagement && pile === PLANTED[open]!.pile,
    );
    const { variables, dissimilarity } = explainPair(spec, open, other + PLANTED.length);
    const parts = new Map(
      variables.map(({ variable, contribution }) => [attributes[variable]!.attribute.id, contribution]),
    );
    expect(dissimilarity).toBeGreaterThan(0);
    expect(parts.get('spacingClass')).toBeCloseTo(dissimilarity, 14);
    expect([parts.get('structure'), parts.get('engagement')]).toEqual([0, 0]);
  });

  it('kinds are composed of what every place told, so that the two sites are of one kind', () => {
    expect(new Set(kindsOf(catalogues({ Holm: opennessAndSlant, Ness: engagementAndPile })))).toEqual(
      new Set(['twined']),
    );
    const told = new Set(kindsOf(catalogues({ Holm: all, Ness: all })));
    expect(told).toContain('open diagonal twining with pile');
    expect(told.size).toBeGreaterThan(4);
  });

  it('asked for by name, a facet that one never tells leaves its finds at the broader kind', () => {
    const prepared = catalogues({ Holm: all, Ness: nameOnly }, { kind: ['structure', 'openness'] });
    const kinds = kindsOf(prepared);
    expect(new Set(kinds.slice(0, PLANTED.length))).toEqual(new Set(['open twining', 'close twining']));
    expect(new Set(kinds.slice(PLANTED.length))).toEqual(new Set(['twined']));
  });

  it('likeness of the two sites is not told from one source', () => {
    const tabby = Array.from({ length: 15 }, () => 'tabby');
    const prepared = catalogues(
      { Holm: opennessAndSlant, Ness: nameOnly },
      { kind: ['structure', 'openness'] },
      tabby,
    );
    const entry = { id: 'alike', kind: 'similarity', assemblages: 'site', of: 'kind' } as const;
    const { words } = analyseOne(prepared, entry, new Map());
    // The same finds in both: 200 of 200 at the level that both record, though the words share the tabbies alone.
    expect(words.because.join(' ')).toMatch(/Holm and Ness 200 of 200/);
    expect(words.because.join(' ')).toMatch(/Draws of one source are not excluded: p = 1 /);
    // By hand: of 55 finds each, the words as recorded share the 15 tabbies alone, 200 * 15 / 55.
    const asWritten = analyseOne(prepared, { ...entry, level: 'recorded' }, new Map());
    expect(asWritten.words.because.join(' ')).toMatch(/54\.5 of 200/);
  });
});
