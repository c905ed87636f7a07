import type { ResultTable, TableCell, Unavailable } from '../contract.ts';
import { NO_TYPE } from './assign.ts';
import type { Judged, TypologyFound } from './compute.ts';
import { describeRule } from './rules.ts';

type Parts = Omit<TypologyFound, 'tables'>;

export function typologyTables(found: Parts): Readonly<Record<string, ResultTable>> {
  return {
    coverage: coverageTable(found),
    ...(found.assignment.blame.some((id) => id !== null) ? { blame: blameTable(found) } : {}),
    ...(found.splits.length > 0
      ? { splits: splitTable(found), parts: partsTable(found), moved: movedTable(found) }
      : {}),
    apart: apartTable(found),
    ...('why' in found.apart || 'why' in found.apart.prediction ? {} : { confusion: confusionTable(found) }),
    ...('why' in found.apart || 'why' in found.apart.freeGroups ? {} : { freeGroups: freeTable(found) }),
    ...(found.meaning.length > 0 ? { meaning: meaningTable(found) } : {}),
    ...(found.rivals.length > 0 ? { rivals: rivalsTable(found) } : {}),
    records: recordsTable(found),
  };
}

const column = (id: string, label: string, unit?: string) => ({
  id,
  label,
  ...(unit === undefined ? {} : { unit }),
});

/** Name of the place that a record was given. */
export function typeName(found: Pick<Judged, 'typology'>, type: number): string {
  if (type >= 0) return found.typology.types[type].label;
  return type === NO_TYPE.none ? 'fits none' : type === NO_TYPE.several ? 'fits several' : 'cannot say';
}

function countOf({ assignment }: Judged, type: number): number {
  return assignment.type.filter((own) => own === type).length;
}

function coverageTable(found: Parts): ResultTable {
  const total = found.assignment.rows.length;
  const line = (type: number, rule: string): TableCell[] => {
    const n = countOf(found, type);
    return [typeName(found, type), rule, n, total, n / total];
  };
  return {
    title: 'Who fits',
    columns: [
      column('type', 'Type'),
      column('rule', 'Rule'),
      column('n', found.unit === 'item' ? 'items' : 'fragments'),
      column('of', 'of'),
      column('share', 'share'),
    ],
    rows: [
      ...found.typology.types.map((type, place) => line(place, describeRule(type.when))),
      line(NO_TYPE.none, ''),
      ...(countOf(found, NO_TYPE.several) > 0 ? [line(NO_TYPE.several, '')] : []),
      line(NO_TYPE.undecided, ''),
    ],
    note: 'Ranges that straddle a limit and readings that are missing leave a record undecided; it is counted in no type.',
  };
}

function blameTable(found: Parts): ResultTable {
  const tally = new Map<string, number>();
  for (const id of found.assignment.blame) if (id !== null) tally.set(id, (tally.get(id) ?? 0) + 1);
  return {
    title: 'Why it cannot be said',
    columns: [column('attribute', 'Attribute'), column('n', 'undecided')],
    rows: [...tally].sort((a, b) => b[1] - a[1]).map(([id, n]) => [found.labelOf.get(id) ?? id, n]),
  };
}

const orWhy = <T>(value: T | Unavailable, pick: (value: T) => TableCell): TableCell =>
  typeof value === 'object' && value !== null && 'why' in value ? (value as Unavailable) : pick(value as T);

function splitTable(found: Parts): ResultTable {
  return {
    title: 'Is there a split at all?',
    columns: [
      column('attribute', 'Attribute'),
      column('n', 'n'),
      column('cuts', 'cut by the rules at'),
      column('dip', 'dip'),
      column('dipP', 'p of the dip'),
      column('parts', 'parts preferred'),
      column('ratio', 'likelihood ratio, two against one'),
      column('ratioP', 'p of the ratio'),
      column('threshold', 'threshold'),
      column('low', 'low'),
      column('high', 'high'),
      column('visible', 'smallest visible distance', 'sd'),
    ],
    rows: found.splits.map((split, place) => [
      `${split.label}${split.unit === '' ? '' : ` (${split.unit})`}`,
      split.values.length,
      split.cuts.join(', '),
      orWhy(split.dip, ({ statistic }) => statistic),
      orWhy(split.dip, ({ p }) => p),
      orWhy(split.best, ({ parts }) => parts.length),
      orWhy(split.twoAgainstOne, ({ statistic }) => statistic),
      orWhy(split.twoAgainstOne, ({ p }) => p),
      orWhy(split.threshold, ({ estimate }) => estimate),
      orWhy(split.threshold, ({ low }) => low),
      orWhy(split.threshold, ({ high }) => high),
      found.visible[place],
    ]),
    note: 'Dip: small p speaks against a single heap. Parts preferred: by BIC among one to five Gaussian parts. Threshold: where two parts of equal spread cross, with its 95 % interval over items drawn again; it means something only where a split was found.',
  };
}

function partsTable(found: Parts): ResultTable {
  return {
    title: 'How many heaps',
    columns: [column('attribute', 'Attribute'), column('parts', 'parts'), column('bic', 'BIC')],
    rows: found.splits.flatMap((split) =>
      split.bic.map(({ parts, bic }): TableCell[] => [split.label, parts, bic]),
    ),
    note: '2 log L minus parameters times ln n: the largest is preferred; differences below 2 are not worth more than a bare mention (Kass & Raftery 1995).',
  };
}

function movedTable(found: Parts): ResultTable {
  return {
    title: 'If the cut moved',
    columns: [
      column('attribute', 'Attribute'),
      column('cut', 'cut'),
      column('by', 'moved by'),
      column('to', 'to'),
      column('changed', 'change type'),
      column('undecided', 'straddle it'),
      column('n', 'n'),
    ],
    rows: found.moved.map(({ attribute, cut, by, to, changed, undecided, n }) => [
      found.labelOf.get(attribute) ?? attribute,
      cut,
      by,
      to,
      changed,
      undecided,
      n,
    ]),
  };
}

function apartTable(found: Parts): ResultTable {
  const { apart } = found;
  const columns = [
    column('question', 'Question'),
    column('statistic', 'statistic'),
    column('p', 'p'),
    column('effect', 'effect'),
    column('method', 'method'),
  ];
  const title = 'Apart in attributes that did not define them';
  if ('why' in apart)
    return {
      title,
      columns,
      rows: [['Are the types apart?', apart, null, null, '']],
      note: circularNote(found),
    };
  const { difference, dispersion, meanSilhouette, prediction, freeGroups } = apart;
  return {
    title,
    columns,
    rows: [
      [
        'Do they differ?',
        orWhy(difference, (d) => d.statistic),
        orWhy(difference, (d) => d.p),
        orWhy(difference, (d) => d.rSquared),
        'permutational analysis of variance; effect: share of the variation',
      ],
      [
        'Do they differ in spread?',
        orWhy(dispersion, (d) => d.statistic),
        orWhy(dispersion, (d) => d.p),
        null,
        'distances to the centroids',
      ],
      [
        'Does each record sit well in its type?',
        orWhy(meanSilhouette, (s) => s),
        null,
        null,
        'mean silhouette width',
      ],
      [
        'Are they predicted for an assemblage from all others?',
        orWhy(prediction, (p) => p.balanced),
        orWhy(prediction, (p) => p.p),
        orWhy(prediction, (p) => p.chance),
        'mean share right over the types; effect: share right by chance',
      ],
      [
        'Do free groups find them?',
        orWhy(freeGroups, (g) => orWhy(g.adjustedRand, (r) => r)),
        null,
        null,
        'adjusted Rand index of medoid groups',
      ],
    ],
    note: circularNote(found),
  };
}

function circularNote({ apart, defining, labelOf }: Parts): string {
  const name = (id: string) => labelOf.get(id) ?? id;
  const twice = 'why' in apart ? [] : apart.usedTwice;
  const compared = 'why' in apart ? '' : `Compared on ${apart.compared.map(name).join(', ')}. `;
  const left = `Left out because they, or what they are computed from, define the types: ${defining.map(name).join(', ')}.`;
  return twice.length === 0
    ? `${compared}${left}`
    : `${compared}${left} Asked for all the same, which would be circular: ${twice.map(name).join(', ')}.`;
}

function confusionTable({ apart, typology }: Parts): ResultTable {
  const confusion = 'why' in apart || 'why' in apart.prediction ? [] : apart.prediction.confusion;
  return {
    title: 'Types predicted for what was left out',
    columns: [
      column('type', 'Type by the rules'),
      ...typology.types.map((type) => column(`as ${type.id}`, `predicted ${type.label}`)),
    ],
    rows: confusion.map((line, place) => [typology.types[place].label, ...line]),
    note: 'Each record is judged by its nearest records of other assemblages, in attributes that did not define the types.',
  };
}

function freeTable({ apart, typology }: Parts): ResultTable {
  const counts = 'why' in apart || 'why' in apart.freeGroups ? [] : apart.freeGroups.counts;
  return {
    title: 'Types against free groups',
    columns: [
      column('type', 'Type'),
      ...(counts[0] ?? []).map((_, group) => column(`group${group + 1}`, `group ${group + 1}`)),
    ],
    rows: counts.map((line, place) => [typology.types[place].label, ...line]),
  };
}

function meaningTable(found: Parts): ResultTable {
  return {
    title: 'What the types go with',
    columns: [
      column('attribute', 'Attribute'),
      column('n', 'n'),
      column('statistic', 'chi-squared'),
      column('df', 'df'),
      column('p', 'p'),
      column('v', 'Cramér’s V, corrected'),
      column('method', 'p by'),
      column('strongest', 'strongest departure'),
    ],
    rows: found.meaning.map((meaning) => [
      meaning.label,
      orWhy(meaning.association, ({ n }) => n),
      orWhy(meaning.association, ({ chiSquared }) => chiSquared),
      orWhy(meaning.association, ({ df }) => df),
      meaning.p,
      orWhy(meaning.association, ({ cramersVCorrected }) => cramersVCorrected),
      meaning.method,
      orWhy(meaning.association, ({ residuals }) => strongest(found, meaning, residuals)),
    ]),
    note: 'Strongest departure: the cell with the largest adjusted residual.',
  };
}

function strongest(
  found: Parts,
  meaning: TypologyFound['meaning'][number],
  residuals: readonly (readonly number[])[],
): string {
  let best = { line: 0, kind: 0, size: 0 };
  residuals.forEach((cells, line) => {
    cells.forEach((value, kind) => {
      if (Math.abs(value) > Math.abs(best.size)) best = { line, kind, size: value };
    });
  });
  const { label } = found.typology.types[meaning.types[best.line]];
  return `${label} in ${meaning.kinds[best.kind]}, ${best.size > 0 ? '+' : '\u2212'}${Math.abs(best.size).toFixed(1)}`;
}

function rivalsTable(found: Parts): ResultTable {
  const line = (judged: Judged): TableCell[] => {
    const { typology, assignment, apart } = judged;
    const typed = assignment.type.filter((type) => type >= 0).length;
    return [
      typology.title,
      typology.types.length,
      judged.defining.length,
      typed,
      assignment.rows.length,
      'why' in apart ? apart : orWhy(apart.meanSilhouette, (s) => s),
      'why' in apart ? apart : orWhy(apart.difference, (d) => d.rSquared),
      'why' in apart ? apart : orWhy(apart.prediction, (p) => p.balanced),
      'why' in apart ? apart : orWhy(apart.prediction, (p) => p.chance),
      'why' in apart ? apart : orWhy(apart.freeGroups, (g) => orWhy(g.adjustedRand, (r) => r)),
    ];
  };
  return {
    title: 'Rivals side by side',
    columns: [
      column('typology', 'Typology'),
      column('types', 'types'),
      column('attributes', 'attributes in its rules'),
      column('typed', 'typed'),
      column('of', 'of'),
      column('silhouette', 'mean silhouette width'),
      column('share', 'share of variation'),
      column('balanced', 'predicted rightly'),
      column('chance', 'by chance'),
      column('rand', 'adjusted Rand, free groups'),
    ],
    rows: [found, ...found.rivals].map(line),
    note: 'Each is compared in attributes that its own rules do not use, so the columns of two rivals rest on different attributes. No single number decides.',
  };
}

function recordsTable(found: Parts): ResultTable {
  return {
    title: 'Each record and its type',
    columns: [
      column('id', found.unit === 'item' ? 'item' : 'fragment'),
      column('type', 'Type'),
      column('blame', 'undecided for want of'),
    ],
    rows: found.ids.map((id, place) => {
      const blame = found.assignment.blame[place];
      return [
        id,
        typeName(found, found.assignment.type[place]),
        blame === null ? '' : (found.labelOf.get(blame) ?? blame),
      ];
    }),
  };
}
