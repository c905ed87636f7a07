import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { countsCatalogue } from '../../datasets/scripts/demo/counts.ts';
import { type Fragment, makeWorld } from '../../datasets/scripts/demo/fragments.ts';
import { germanCatalogue } from '../../datasets/scripts/demo/german.ts';
import { mergedCatalogue } from '../../datasets/scripts/demo/merged.ts';
import { rangesCatalogue } from '../../datasets/scripts/demo/ranges.ts';
import { spanishCatalogue } from '../../datasets/scripts/demo/spanish.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';

export const DEMO = fileURLToPath(new URL('../../datasets/demo/', import.meta.url));

/** What a study of the demo reads beside the five catalogues. */
const BESIDE = [
  'assemblages.csv',
  'claims.csv',
  'tabby.types.json',
  'twining.types.json',
  ...['assemblages', 'drommavel-ranges', 'pellunar-wreck', 'quorrimel-katalog', 'tazzimbe-ysketh'].map(
    (name) => `${name}.profile.json`,
  ),
  'ulvombre-counts.profile.json',
];

/**
 * Writes the demo again with more finds: its invented world is made several times over, each time by other chance, and
 * the items are numbered on; the catalogues are as untidy as those of the demo.
 *
 * @param fragments how many at least.
 * @param kinds the analyses of the demo's study that are kept, by kind; all of them if left out.
 * @returns the path of the study and how many fragments there are.
 */
export function writeLargeDemo(folder: string, fragments: number, kinds?: readonly string[]) {
  const random = createRandom(20);
  const made: Fragment[] = [];
  for (let world = 0; made.length < fragments; world++)
    for (const one of renumbered(makeWorld(random.stream(`world ${world}`)).fragments, world)) made.push(one);
  const of = (...prefixes: readonly string[]) =>
    made.filter(({ item }) => prefixes.includes(item.site.prefix));
  for (const { file, bytes } of [
    germanCatalogue(of('QU'), random.stream('german')),
    countsCatalogue(of('UT'), random.stream('counts')),
    rangesCatalogue(of('DL'), random.stream('ranges')),
    mergedCatalogue(of('PW'), random.stream('merged')),
    spanishCatalogue(of('TZ', 'YS'), random.stream('spanish')),
  ])
    writeFileSync(join(folder, file), bytes);
  for (const name of BESIDE) copyFileSync(join(DEMO, name), join(folder, name));
  const study = JSON.parse(readFileSync(join(DEMO, 'study.json'), 'utf8'));
  const analyses = study.analyses.filter(
    ({ kind }: { kind: string }) => kinds === undefined || kinds.includes(kind),
  );
  const path = join(folder, 'study.json');
  writeFileSync(path, JSON.stringify({ ...study, analyses, brief: undefined }));
  return { path, fragments: made.length };
}

/** More items than a site of the demo has. */
const PER_WORLD = 1000;

function renumbered(fragments: readonly Fragment[], world: number): readonly Fragment[] {
  const items = new Map<string, Fragment['item']>();
  return fragments.map((fragment) => {
    const { id } = fragment.item;
    const number = Number(id.slice(id.indexOf('-') + 1)) + world * PER_WORLD;
    const item = items.get(id) ?? { ...fragment.item, id: `${fragment.item.site.prefix}-${number}` };
    items.set(id, item);
    return { ...fragment, id: item.id + fragment.id.slice(id.length), item };
  });
}
