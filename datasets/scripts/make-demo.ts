/**
 * Writes the invented demo: five untidy catalogues, the assemblage table, the truth behind them and the
 * counts of every untidiness. Same seed, same bytes. Run from the project root:
 * npx tsx datasets/scripts/make-demo.ts [folder]
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { countsCatalogue } from './demo/counts.ts';
import { type Fragment, makeWorld, type World } from './demo/fragments.ts';
import { germanCatalogue } from './demo/german.ts';
import { hardCases } from './demo/hard-cases.ts';
import { mergedCatalogue } from './demo/merged.ts';
import type { Catalogue } from './demo/mess.ts';
import { packageDescription, type Resource } from './demo/package.ts';
import { rangesCatalogue } from './demo/ranges.ts';
import { MEASURES, PHASE_YEARS, type Phase, SITES } from './demo/scenario.ts';
import { spanishCatalogue } from './demo/spanish.ts';
import { csvBytes, type FileForm, type Grid } from './demo/text.ts';

const SEED = 20;
const SIDES = ['engagement', 'pile', 'grouping'] as const;
const folder = process.argv[2] ?? 'datasets/demo';

const random = createRandom(SEED);
const world = makeWorld(random.stream('world'));
const of = (...prefixes: readonly string[]): Fragment[] =>
  world.fragments.filter((fragment) => prefixes.includes(fragment.item.site.prefix));
const catalogues = [
  germanCatalogue(of('QU'), random.stream('german')),
  countsCatalogue(of('UT'), random.stream('counts')),
  rangesCatalogue(of('DL'), random.stream('ranges')),
  mergedCatalogue(of('PW'), random.stream('merged')),
  spanishCatalogue(of('TZ', 'YS'), random.stream('spanish')),
];

const PLAIN: FileForm = { delimiter: ',', encoding: 'utf-8', lineEnd: '\n' };
const resources: readonly Resource[] = [
  ...catalogues,
  plain('assemblages.csv', 'Sites and phases with their dates, recovery and setting.', assemblages(), []),
  hardCases(),
  plain('truth.csv', 'What each fragment truly is, as planted.', truth(world, catalogues), MEASURES),
];

mkdirSync(folder, { recursive: true });
for (const { file, bytes } of resources) writeFileSync(join(folder, file), bytes);
writeJson('datapackage.json', packageDescription(resources));
writeJson('mess.json', {
  about: 'How often each untidiness was put into each catalogue; written by datasets/scripts/make-demo.ts.',
  seed: SEED,
  fragments: world.fragments.length,
  items: world.items.length,
  lost: world.lost,
  catalogues: Object.fromEntries(
    catalogues.map(({ file, fragments, tally }) => [file, { fragments: fragments.length, ...tally.counts }]),
  ),
});

function plain(file: string, description: string, grid: Grid, numbers: readonly string[]): Resource {
  const [fields] = grid;
  return {
    file,
    description,
    form: PLAIN,
    bytes: csvBytes(grid, PLAIN),
    fields: fields!,
    headerRows: [1],
    numbers,
  };
}

function writeJson(file: string, value: unknown): void {
  writeFileSync(join(folder, file), `${JSON.stringify(value, null, 2)}\n`);
}

function assemblages(): Grid {
  const row = (site: (typeof SITES)[number], phase: Phase) => [
    site.name,
    site.region,
    phase,
    ...PHASE_YEARS[phase],
    String(site.grid[0]),
    String(site.grid[1]),
    site.recovery,
    site.modes.map(([mode]) => mode).join(' and '),
  ];
  const header = [
    'site',
    'region',
    'phase',
    'from',
    'to',
    'grid east (km)',
    'grid north (km)',
    'recovery',
    'setting',
  ];
  const rows = SITES.flatMap((site) => {
    const phases = [...new Set(site.made.map((made) => made.phase))];
    return phases.map((phase) => row(site, phase));
  });
  // Surveyed, but nothing of cloth was found: an assemblage without fragments.
  const terraces = SITES.find((site) => site.prefix === 'UT')!;
  return [header, ...rows, row(terraces, 'Early')];
}

function truth(of: World, written: readonly Catalogue[]): Grid {
  const header = [
    'fragment',
    'item',
    'file',
    'site',
    'phase',
    'tradition',
    'kind',
    'preservation',
    'fibre',
    ...SIDES,
    ...MEASURES,
  ];
  const file = new Map(
    written.flatMap((each) => each.fragments.map((fragment) => [fragment, each.file] as const)),
  );
  const rows = of.fragments.map((fragment) => {
    const { item } = fragment;
    const measures = MEASURES.map((measure) => item.measures[measure]?.toFixed(3) ?? '');
    const known = [
      item.id,
      file.get(fragment)!,
      item.site.name,
      item.phase,
      item.tradition,
      item.kind,
      item.mode,
    ];
    const sides = SIDES.map((side) => item.sides[side] ?? '');
    return [fragment.id, ...known, item.fibre, ...sides, ...measures];
  });
  return [header, ...rows];
}
