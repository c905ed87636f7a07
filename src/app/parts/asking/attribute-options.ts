import { certaintyId } from '../../../fragments/certainty-groups.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import type { ChoiceOption } from '../controls.tsx';

/** Only these are compared, and a column is one of them only once it is understood so. */
export function isComparable({ definition, filled }: AttributeView): boolean {
  return (
    ['structure', 'spacing', 'fibre'].includes(definition.block) && definition.scale !== 'text' && filled > 0
  );
}

export const NOTHING_COMPARABLE =
  'Finds are compared in structure, spacing and fibre, and no column is understood as one of these yet; answer the questions on Sources.';

/** What a fabric is called where one thing is said of it: its kind, or the structure where no kind is composed. */
export function fabricAttribute(attributes: readonly AttributeView[]): 'kind' | 'structure' {
  return attributes.some(({ definition, filled }) => definition.id === 'kind' && filled > 0)
    ? 'kind'
    : 'structure';
}

/** Attributes that put records into at least two groups; the usual ones first. */
export function groupingOptions(attributes: readonly AttributeView[]): ChoiceOption[] {
  const first = ['site', 'phase', 'period', 'region', 'kind', 'structure', 'fibre', 'preservation'];
  const rank = (id: string) => (first.includes(id) ? first.indexOf(id) : first.length);
  const kinds = attributes
    .filter(({ levels }) => levels.length >= 2)
    .map(({ definition, levels }) => ({
      id: definition.id,
      label: definition.label.toLowerCase(),
      note: `${levels.length} kinds`,
    }))
    .sort((a, b) => rank(a.id) - rank(b.id));
  return [
    ...kinds.slice(0, 1),
    { id: 'assemblage', label: 'assemblage', note: 'site and phase as one' },
    ...kinds.slice(1),
    ...attributes
      .filter(({ certain, doubtful }) => certain > 0 && doubtful > 0)
      .map(({ definition, certain, doubtful }) => ({
        id: certaintyId(definition.id),
        label: `certainty of ${definition.label.toLowerCase()}`,
        note: `${certain} certain, ${doubtful} doubtful`,
      })),
  ];
}

/** Numbers and grades that some record has: spacings first, grades and what only follows from others last. */
export function numberOptions(attributes: readonly AttributeView[]): ChoiceOption[] {
  const numeric = attributes.filter(
    ({ definition, filled }) =>
      filled > 0 && ['ratio', 'interval', 'ordinal'].includes(definition.scale) && definition.unit !== 'year',
  );
  const rank = ({ definition }: AttributeView) =>
    (definition.derived ? 4 : 0) +
    (definition.scale === 'ordinal' ? 2 : 0) +
    (definition.block === 'spacing' ? 0 : 1);
  return numeric
    .sort((a, b) => rank(a) - rank(b) || b.filled - a.filled)
    .map(({ definition, filled, records }) => ({
      id: definition.id,
      label: definition.unit === undefined ? definition.label : `${definition.label} (${definition.unit})`,
      note: `${filled} of ${records} have it${definition.derived ? ', derived' : ''}`,
    }));
}

/** Kinds that some record has and that are worth counting: no groupings of context. */
export function kindOptions(attributes: readonly AttributeView[]): ChoiceOption[] {
  const first = ['kind', 'structure', 'fibre', 'preservation', 'twist1', 'twist2', 'rowSlant'];
  const rank = (id: string) => (first.includes(id) ? first.indexOf(id) : first.length);
  return attributes
    .filter(({ levels }) => levels.length >= 2)
    .map(({ definition, filled, records }) => ({
      id: definition.id,
      label: definition.label.toLowerCase(),
      note: `${filled} of ${records} have it`,
    }))
    .sort((a, b) => rank(a.id) - rank(b.id));
}

/** Ways to say how alike two assemblages are. */
export const COEFFICIENTS: readonly ChoiceOption[] = [
  { id: 'brainerd-robinson', label: 'Brainerd-Robinson', note: 'shares, 0 to 200' },
  { id: 'bray-curtis', label: 'Bray-Curtis', note: 'counts, so that size matters' },
  { id: 'morisita-horn', label: 'Morisita-Horn', note: 'shares, led by the common kinds' },
  { id: 'jaccard', label: 'Jaccard', note: 'which kinds occur at all' },
  { id: 'chi-square', label: 'Chi-square distance', note: 'led by the rare kinds' },
];

/** At which level of a hierarchy kinds are counted; terms of a cut of one's own are for the study file. */
export const LEVELS_OF_KINDS: readonly ChoiceOption[] = [
  { id: 'common', label: 'as closely as all record', note: 'broad words stand for their narrower ones' },
  { id: 'recorded', label: 'by the words as recorded', note: 'a broad word is a kind of its own' },
];
