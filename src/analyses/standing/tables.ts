import type { Limits } from '../../numerics/foundation/limits.ts';
import type { ResultColumn, ResultTable, TableCell, Unavailable } from '../contract.ts';
import { printList, printNumber } from '../phrasing.ts';
import { guardTable } from '../shared/guard/tables.ts';
import { levelNote } from '../shared/level/said.ts';
import { NAMED, SAID } from '../shared/options/coefficient.ts';
import { besideTable } from './beside-table.ts';
import type { Likeness, StandingFound } from './found.ts';

/** Every answer as a table; those without a row are left out. */
export function standingTables(found: StandingFound): Readonly<Record<string, ResultTable>> {
  const all: Record<string, ResultTable> = {
    likeness: likenessTable(found),
    apart: apartTable(found),
    beside: besideTable(found),
    unlike: unlikeTable(found),
    elsewhere: elsewhereTable(found),
    sameWithin: sameWithinTable(found),
    axes: axesTable(found),
    nearer: nearerTable(found),
    ...guardTable([{ of: found.kindsLabel, guard: found.guard }]),
  };
  return Object.fromEntries(Object.entries(all).filter(([, table]) => table.rows.length > 0));
}

const col = (id: string, label: string): ResultColumn => ({ id, label });
const ends = (limits: Limits | Unavailable): TableCell[] =>
  'why' in limits ? [limits, limits] : [limits.low, limits.high];
const percent = (share: number) => `${printNumber(share * 100)} %`;

const likenessColumns = (coefficient: string): ResultColumn[] => [
  col('items', 'items'),
  col('likeness', coefficient),
  col('low', 'at least'),
  col('high', 'at most'),
  col('p', 'p, one source'),
  col('pAdjusted', 'p adjusted'),
  col('told', 'one source'),
  col('method', 'p from'),
];
const likenessCells = (one: Likeness): TableCell[] => [
  one.items,
  one.value,
  ...ends(one.interval),
  one.p,
  one.pAdjusted,
  one.told,
  one.method,
];

function likenessTable({ likeness, amongLabel, options, level }: StandingFound): ResultTable {
  return {
    title: `Whom ${options.site} is like`,
    columns: [col('label', amongLabel), ...likenessColumns(NAMED[options.coefficient])],
    rows: likeness.map((one) => [one.label, ...likenessCells(one)]),
    note:
      `${SAID[options.coefficient]}; limits: ${percent(options.confidence)} of draws of the items of both, moved so that their middle is the value found. p: that both are draws ` +
      'from one source, items dealt between them (DeBoer, Kintigh & Rostoker 1996), adjusted over the assemblages (Holm).' +
      levelNote(level, 'item'),
  };
}

function sameWithinTable({ sameWithin, amongLabel, options }: StandingFound): ResultTable {
  const gap = (why: string) => Array.from({ length: 6 }, (): TableCell => ({ why }));
  return {
    title: 'Like with like',
    columns: [
      col('attribute', 'within the same'),
      col('value', 'value'),
      col('siteItems', 'items of the site'),
      col('label', amongLabel),
      ...likenessColumns(NAMED[options.coefficient]),
    ],
    rows: sameWithin.flatMap((same): TableCell[][] => {
      if ('why' in same)
        return [[same.attribute, { why: same.why }, null, '', ...gap(same.why), 'cannot be told', '']];
      const head = [same.attribute, same.value, same.items];
      return [
        ...same.likeness.map((one) => [...head, one.label, ...likenessCells(one)]),
        ...same.without.map((label) => [
          ...head,
          label,
          0,
          ...gap(`no item is ${same.value}`).slice(1),
          'cannot be told',
          '',
        ]),
      ];
    }),
    note: 'The likeness once more, counting only items of the value that is commonest at the site.',
  };
}

function apartTable({ apart, sameWithin, options }: StandingFound): ResultTable {
  const saidOf = sameWithin.map((one) => ('why' in one ? one.attribute : `${one.attribute} (${one.value})`));
  return {
    title: `What sets ${options.site} apart`,
    columns: [
      col('attribute', 'attribute'),
      col('unit', 'unit'),
      col('siteItems', 'items of the site'),
      col('otherItems', 'items of all others'),
      col('measure', 'effect is'),
      col('effect', 'effect'),
      col('p', 'p'),
      col('pAdjusted', 'p adjusted'),
      col('told', 'verdict'),
      col('method', 'p from'),
      col('says', 'site against all others'),
      ...sameWithin.map(({ attribute }, place) =>
        col(`within${place + 1}`, `effect within the same ${attribute.toLowerCase()}`),
      ),
    ],
    rows: apart.map((one) => [
      one.attribute,
      one.unit,
      one.siteItems,
      one.otherItems,
      one.measure,
      one.effect,
      one.p,
      one.pAdjusted,
      one.told,
      one.method,
      one.says,
      ...one.within,
    ]),
    briefly: ['attribute', 'effect', 'pAdjusted', 'siteItems', 'otherItems', 'says'],
    note:
      'Cliff’s delta: above 0 where values tend to be larger at the site (-1 to 1). V: 0 to 1, corrected after Bergsma 2013; the kind most in excess at the site is named. ' +
      `p adjusted over the attributes (Holm). ${saidOf.length === 0 ? '' : `Last: the effect among items alike in ${printList(saidOf)} only.`}`.trim(),
  };
}

function unlikeTable(found: StandingFound): ResultTable {
  const { unlike, within, comparedOn, amongLabel, options } = found;
  return {
    title: 'How unlike its items are to those of others',
    columns: [
      col('label', amongLabel),
      col('items', 'items'),
      col('between', 'mean dissimilarity'),
      col('low', 'at least'),
      col('high', 'at most'),
      col('siteWithin', 'among the site’s own'),
      col('within', 'among theirs'),
      col('excess', 'beyond the mean of both'),
    ],
    rows: unlike.map((one) => [
      one.label,
      one.items,
      one.between,
      ...ends(one.interval),
      within,
      one.within,
      one.excess,
    ]),
    note: `Dissimilarity of items, 0 to 1, on ${printList(comparedOn)}; limits at ${percent(options.confidence)} by drawing items again. Of more than 200 items, limits and means among them rest on 200 drawn by the seed.${ownNote(found)}`,
  };
}

/** Where not all items of the site could be set against all others. */
function ownNote({ ownDrawn, options, siteItems }: StandingFound): string {
  return ownDrawn === null
    ? ''
    : ` Of the ${siteItems} items of ${options.site} ${ownDrawn} were set against all others, drawn by the seed.`;
}

function elsewhereTable(found: StandingFound): ResultTable {
  const { atHome, options } = found;
  return {
    title: 'Items at home elsewhere',
    columns: [
      col('id', 'item'),
      col('home', 'most of its nearest are of'),
      col('share', 'share of its nearest of others'),
      col('nearest', 'nearest of others'),
      col('nearestAt', 'found at'),
      col('distance', 'distance'),
    ],
    rows:
      'why' in atHome
        ? []
        : atHome.elsewhere.map((one) => [
            one.id,
            one.home,
            one.share,
            one.nearest,
            one.nearestAt,
            one.distance,
          ]),
    note:
      'why' in atHome
        ? atHome.why
        : `More than half of its ${options.nearest} nearest items (with all as near as the last of them) are of others. On average ${percent(atHome.share)} are; labels dealt at random would give ${percent(atHome.expected)}.${ownNote(found)}`,
  };
}

function axesTable({ axes, options }: StandingFound): ResultTable {
  const shares = 'why' in axes ? [] : axes.shares;
  const columns = [
    col('role', 'what'),
    col('label', 'label'),
    col('items', 'items'),
    ...shares.flatMap((share, place) => [
      col(`axis${place + 1}`, `axis ${place + 1} (${percent(share)})`),
      col(`low${place + 1}`, 'at least'),
      col(`high${place + 1}`, 'at most'),
    ]),
  ];
  if ('why' in axes)
    return { title: 'Place on the axes of the others', columns, rows: [['the site', options.site, axes]] };
  const rowOf = (role: string) => (point: { label: string; items: number; at: readonly number[] }) => [
    role,
    point.label,
    point.items,
    ...point.at.flatMap((at) => [at, null, null]),
  ];
  return {
    title: 'Place on the axes of the others',
    columns,
    rows: [
      [
        'the site',
        options.site,
        null,
        ...axes.site.flatMap((at, place) => [
          at,
          ...ends(axes.limits[place] ?? { why: 'no place on this axis' }),
        ]),
      ],
      ...axes.others.map(rowOf('assemblage')),
      ...axes.kinds.map(rowOf('kind')),
    ],
    note:
      `Correspondence analysis of the other assemblages; the site is a supplementary row, its limits (${percent(options.confidence)}) by drawing its items again (${axes.cloud.length} draws). ` +
      'Items of a kind are counted at the others.',
  };
}

function nearerTable({ nearer }: StandingFound): ResultTable {
  return {
    title: 'Nearer in space or in time',
    columns: [
      col('who', 'of'),
      col('against', 'unlikeness with distance in'),
      col('apartFrom', 'apart from distance in'),
      col('statistic', 'rank correlation'),
      col('p', 'p'),
      col('told', 'verdict'),
      col('method', 'p from'),
      col('n', 'assemblages'),
    ],
    rows: nearer.map(({ who, against, apartFrom, answer, told }): TableCell[] => [
      who,
      against,
      apartFrom,
      ...('why' in answer
        ? [answer, answer, told, '', null]
        : [
            answer.statistic,
            answer.p,
            told,
            answer.method === 'exact'
              ? `exact, all ${answer.relabellings} orders`
              : `${answer.relabellings} random orders`,
            answer.n,
          ]),
    ]),
    note: 'One-sided for "the further, the less alike". All assemblages: Mantel tests on ranks, partial where apart from a distance; this one: its own unlikeness with its own distances (Spearman).',
  };
}
