import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import type { Apart } from './apart-found.ts';
import type { TypologyFound } from './found.ts';
import { column, orWhy } from './table-parts.ts';

export function apartTable(found: TypologyFound): ResultTable {
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
      rows: [['Are the types apart?', { why: apart.why }, null, null, '']],
      note: circularNote(found),
    };
  return { title, columns, rows: apartRows(found, apart), note: circularNote(found) };
}

function apartRows({ complexity, typology }: TypologyFound, apart: Apart): TableCell[][] {
  const { difference, dispersion, meanSilhouette, prediction, discriminant, freeGroups, finerCoarser } =
    apart;
  const { merged, divided } = finerCoarser;
  const predicted = (question: string, one: Apart['prediction'], method: string): TableCell[] => [
    question,
    orWhy(one, ({ balanced }) => balanced),
    orWhy(one, ({ p }) => p),
    orWhy(one, ({ kappa }) => orWhy(kappa, (k) => k.kappa)),
    `${method}; mean share right over the types${isUnavailable(one) ? '' : `, ${(100 * one.chance).toFixed(0)} % by guessing, n = ${one.n}`}; effect: Cohen’s kappa`,
  ];
  const name = (type: number) => typology.types[type].label;
  return [
    [
      'Do they differ?',
      orWhy(difference, ({ statistic }) => statistic),
      orWhy(difference, ({ p }) => p),
      orWhy(difference, ({ rSquared }) => rSquared),
      'permutational analysis of variance; effect: share of the variation',
    ],
    [
      'Do they differ in spread?',
      orWhy(dispersion, ({ statistic }) => statistic),
      orWhy(dispersion, ({ p }) => p),
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
    predicted('Are they predicted for an assemblage from all others?', prediction, 'nearest records'),
    predicted('The same by numbers alone?', discriminant, 'linear discriminant analysis'),
    [
      'Do free groups find them?',
      orWhy(freeGroups, (g) => orWhy(g.adjustedRand, (r) => r)),
      null,
      orWhy(freeGroups, (g) => orWhy(g.adjustedMutualInformation, (r) => r)),
      'adjusted Rand index of medoid groups; effect: adjusted mutual information',
    ],
    [
      'Would one type fewer do?',
      orWhy(merged, (m) => orWhy(m.difference, (d) => d.statistic)),
      orWhy(merged, (m) => orWhy(m.difference, (d) => d.p)),
      orWhy(merged, (m) => orWhy(m.difference, (d) => d.rSquared)),
      isUnavailable(merged)
        ? 'the two nearest types'
        : `the two nearest types, ${name(merged.first)} and ${name(merged.second)}, compared alone`,
    ],
    [
      'Would one type more do?',
      orWhy(divided, ({ strength }) => strength),
      null,
      orWhy(divided, (d) => d.silhouette),
      isUnavailable(divided)
        ? 'the widest type in two'
        : `${name(divided.type)}, the widest, in groups of ${divided.sizes.join(' and ')}: prediction strength, 0.8 usually asked for; effect: mean silhouette width`,
    ],
    [
      'Do they pay for themselves?',
      complexity.saved,
      null,
      null,
      `bits saved in telling ${complexity.attributes.length} other attributes, after ${complexity.rules.toFixed(0)} bits for the rules`,
    ],
  ];
}

function circularNote({ apart, defining, labelOf }: TypologyFound): string {
  const name = (id: string) => labelOf.get(id) ?? id;
  const twice = apart.usedTwice;
  const compared = 'why' in apart ? '' : `Compared on ${apart.compared.map(name).join(', ')}. `;
  const drawn =
    'why' in apart || apart.drawnFrom === null
      ? ''
      : ` All on ${apart.places.length} records, drawn by chance from ${apart.drawnFrom} that have a type.`;
  const left = `Left out because they, or what they are computed from, define the types: ${defining.map(name).join(', ')}.${drawn}`;
  return twice.length === 0
    ? `${compared}${left}`
    : `${compared}${left} Asked for all the same, which would be circular: ${twice.map(name).join(', ')}.`;
}

export function disagreementsTable({ apart, typology, ids, assignment }: TypologyFound): ResultTable {
  const rows: TableCell[][] = [];
  if (!('why' in apart)) {
    const typed = Array.from(assignment.type).flatMap((type, place) => (type >= 0 ? [place] : []));
    const { prediction, freeGroups, labels } = apart;
    apart.places.forEach((place, at) => {
      const predicted = isUnavailable(prediction) ? labels[at] : prediction.predicted[at];
      const group = isUnavailable(freeGroups) ? undefined : freeGroups.membership[at];
      const matched =
        group === undefined || isUnavailable(freeGroups) ? labels[at] : freeGroups.match.indexOf(group);
      if (predicted === labels[at] && matched === labels[at]) return;
      rows.push([
        ids[typed[place]],
        typology.types[labels[at]].label,
        typology.types[predicted].label,
        group === undefined
          ? null
          : `group ${group + 1}${matched < 0 ? '' : ` (${typology.types[matched].label})`}`,
      ]);
    });
  }
  return {
    title: 'Records that disagree',
    columns: [
      column('id', 'Record'),
      column('type', 'Type by the rules'),
      column('predicted', 'predicted'),
      column('group', 'free group'),
    ],
    rows,
    note: 'Records whose nearest neighbours elsewhere, or whose free group, speak for another type.',
  };
}

export function confusionTable({ apart, typology }: TypologyFound): ResultTable {
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

export function freeTable({ apart, typology }: TypologyFound): ResultTable {
  const groups = 'why' in apart || 'why' in apart.freeGroups ? undefined : apart.freeGroups;
  const labels = 'why' in apart ? new Int32Array() : apart.labels;
  return {
    title: 'Types against free groups',
    columns: [
      column('type', 'Type'),
      ...(groups?.counts[0] ?? []).map((_, group) => column(`group${group + 1}`, `group ${group + 1}`)),
      column('match', 'answers to'),
      column('jaccard', 'found again, mean Jaccard'),
      column('recovered', 'found again in'),
      column('resamples', 'of'),
    ],
    rows: (groups?.counts ?? []).map((line, place) => {
      const match = groups?.match[place] ?? -1;
      const stability = labels.includes(place) ? groups?.stability[place] : undefined;
      return [
        typology.types[place].label,
        ...line,
        match < 0 ? '' : `group ${match + 1}`,
        stability === undefined || stability.resamples === 0
          ? { why: 'the type has no record to compare' }
          : stability.mean,
        stability?.recovered ?? null,
        stability?.resamples ?? null,
      ];
    }),
    note: 'As many medoid groups as types, in attributes that did not define them; then again on items drawn anew (Hennig 2007): found again where Jaccard’s coefficient is 0.75 or more.',
  };
}
