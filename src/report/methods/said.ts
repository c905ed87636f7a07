import { ANALYSES } from '../../analyses/register.ts';
import type { AnalysisResult } from '../../study/results/results.ts';

/**
 * What was done, in sentences for a chapter on methods, from the questions that a study asked with the settings
 * that it gave, defaults filled in by each question's schema. A name of `REFERENCES` in brackets is cited.
 */
type Settings = Readonly<Record<string, unknown>>;
type Says = (settings: Settings) => string;

const SAYS: Readonly<Record<string, Says>> = {
  summary: ({ confidence, limits }) =>
    `Numbers are given as medians and quartiles (type 7; [Hyndman & Fan 1996]), with ${percent(confidence)} limits by drawing the records again (bias-corrected and accelerated, widened for few; [Efron 1987], [Hesterberg 2015]), shares with ${limitsBy(limits)}.`,
  contrast: ({ adjust, confidence, relabellings }) =>
    `Groups were compared by ranks ([Mann & Whitney 1947] for two, [Kruskal & Wallis 1952] for more, pairs after [Dunn 1964]), p exact where all ways to deal the records can be tried, else as the result says (at most ${relabellings} random ways, never nought: [Phipson & Smyth 2010]) and adjusted over its family (${adjusted(adjust)}); effects are Cliff’s delta ([Cliff 1993]) with ${percent(confidence)} limits.`,
  crosstab: ({ confidence }) =>
    `Tables of kinds were tested by chi-square where the expected counts carry it, else by Fisher’s exact test ([Fisher 1935]); strength is Cramér’s V corrected for bias ([Bergsma 2013]) with ${percent(confidence)} limits, single cells are adjusted residuals ([Haberman 1973]).`,
  similarity: ({ coefficient, confidence, places }) =>
    `Assemblages were compared by ${coefficientOf(coefficient)} at the finest level of kinds that all of them record, with ${percent(confidence)} limits by drawing their records again and p from dealing the records between two ([DeBoer et al. 1996]), after [Holm 1979]; how varied they are, at equal coverage ([Chao & Jost 2012]); their order by correspondence analysis ([Greenacre 1984])${places === undefined ? '' : ', likeness against distance by rank Mantel tests ([Mantel 1967])'}.`,
  grouping: ({ method, k, resamples, permutations }) =>
    `Records were grouped by ${groupedBy(method)} on a dissimilarity of the blocks structure, spacing and fibre ([Gower 1971]; terms by their place in the vocabulary, [Wu & Palmer 1994])${k === 'choose' ? ', the number of groups chosen by mean silhouette width ([Rousseeuw 1987])' : ''}; groups were found again in ${resamples} draws ([Hennig 2007]) and held against ${permutations} tables without groups of each kind.`,
  ordination: ({ method }) => `Records were set out on axes by ${ordinatedBy(method)}.`,
  typology: ({ relabellings, confidence }) =>
    `Types were assigned by rules with three values, in, out and cannot say ([Kleene 1952]). A split of readings was held for found at ${percent(confidence)} when dip ([Hartigan & Hartigan 1985]), critical bandwidth ([Silverman 1981]) and BIC agree; types were compared in attributes that do not define them (pseudo-F, [Anderson 2001], ${relabellings} ways to deal the labels) and predicted for assemblages left out.`,
  placement: ({ level, neighbours }) =>
    `The find was placed by the block dissimilarity to the comparanda on the attributes that it has; a label is excluded at ${percent(level)} when the conformal p of the find’s mean dissimilarity to its ${neighbours} nearest is too small ([Vovk et al. 2005]), and labels with too few records are never excluded.`,
  standing: ({ coefficient, confidence }) =>
    `The site was compared with every other by ${coefficientOf(coefficient)} at the level of kinds that all record, ranks and ${percent(confidence)} limits by drawing the records of all assemblages again, p by dealing records between two ([DeBoer et al. 1996]) after [Holm 1979]; its place among the others is a supplementary row of their correspondence analysis ([Greenacre 1984]).`,
  threadcount: ({ confidence, draws }) =>
    `Two measurements of the same record were related by Spearman’s rank correlation ([Spearman 1904]) with ${percent(confidence)} limits, again within each group, and again with values drawn within the ranges of the readings (${draws} times).`,
  chronology: ({ confidence, relabellings, draws }) =>
    `Each record was shared out evenly over its span of years ([Ratcliffe 2000]); counts in slices of time have ${percent(confidence)} limits of where such dates would put them, once with a date of each record's own and once with one date for all of a place and span. That a kind comes later than others was tested by ranks of the middles of the spans, p by dealing the kinds again (at most ${relabellings} random ways, [Phipson & Smyth 2010]) after [Holm 1979], again within each place, and again with dates drawn within the spans (${draws} times).`,
  map: ({ deals, confidence }) =>
    `Places were drawn by their coordinates; lines join places that lean towards the same kinds more than dealing their records anew (${deals} times) gives, and of the lines at most ${percent(1 - Number(confidence))} are expected to be of chance.`,
  claims: () =>
    'Printed figures were held against what any value that prints so allows, from the data where there are any and from each other: totals, rounding, means of whole numbers, statistic against p.',
};

function percent(level: unknown): string {
  return typeof level === 'number' ? `${Number((level * 100).toFixed(1))} %` : 'the stated';
}

function limitsBy(limits: unknown): string {
  if (limits === 'exact') return 'exact limits ([Clopper & Pearson 1934])';
  return limits === 'jeffreys' ? 'Jeffreys limits ([Brown et al. 2001])' : 'score limits ([Wilson 1927])';
}

function adjusted(adjust: unknown): string {
  return adjust === 'holm' ? '[Holm 1979]' : '[Benjamini & Hochberg 1995]';
}

const COEFFICIENTS: Readonly<Record<string, string>> = {
  'brainerd-robinson': 'the Brainerd-Robinson coefficient ([Brainerd 1951], [Robinson 1951])',
  'bray-curtis': 'Bray-Curtis similarity ([Bray & Curtis 1957])',
  'morisita-horn': 'the Morisita-Horn index ([Horn 1966])',
  jaccard: 'the Jaccard index ([Jaccard 1901])',
  'chi-square': 'chi-square distance ([Greenacre 1984])',
};

function coefficientOf(coefficient: unknown): string {
  return COEFFICIENTS[String(coefficient)] ?? String(coefficient);
}

function groupedBy(method: unknown): string {
  if (method === 'medoids') return 'medoids ([Kaufman & Rousseeuw 1990])';
  if (method === 'kmeans') return 'k-means ([Lloyd 1982])';
  if (method === 'density') return 'hierarchical density ([Campello et al. 2013])';
  return `a tree (${String(method)} linkage; [Murtagh 1983])`;
}

function ordinatedBy(method: unknown): string {
  if (method === 'pcoa')
    return 'principal coordinates of the block dissimilarity ([Gower 1966], [Gower 1971])';
  if (method === 'pca') return 'principal components';
  if (method === 'ca') return 'correspondence analysis ([Greenacre 1984])';
  return method === 'mca'
    ? 'multiple correspondence analysis ([Greenacre 1984])'
    : 'factor analysis of mixed data ([Greenacre 1984] for the kinds)';
}

/** The sentences of the questions that were computed, each once, and the references that they cite, in order. */
export function methodsSaid(results: readonly AnalysisResult[]): {
  readonly sentences: readonly string[];
  readonly cited: readonly string[];
} {
  const sentences = results.flatMap((result) => {
    const says = SAYS[result.kind];
    const schema = ANALYSES.find(({ kind }) => kind === result.kind)?.options;
    if (says === undefined || schema === undefined || result.why !== undefined) return [];
    return [says(schema.parse(result.options) as Settings)];
  });
  const distinct = [...new Set(sentences)];
  const cited = distinct.flatMap((sentence) =>
    [...sentence.matchAll(/\[([^\]]+)\]/g)].map(([, name]) => name),
  );
  return {
    sentences: distinct.map((sentence) => sentence.replace(/[[\]]/g, '')),
    cited: [...new Set(cited)].sort((a, b) => (a < b ? -1 : 1)),
  };
}
