import type { AttributeView } from '../../engine/views/study.ts';
import { withOptions } from '../../parts/settings.ts';
import { type StudyAnalysis, type Workspace, withAnalysis } from '../../state/workspace.ts';

/** The grouping and the ordination that the Kinship screen shows, and how the one follows the other. */

const NEW_GROUPS: StudyAnalysis = { id: 'groups', kind: 'grouping' };
const NEW_AXES: StudyAnalysis = { id: 'axes', kind: 'ordination' };

export function groupsOf(analyses: readonly StudyAnalysis[]): StudyAnalysis {
  return analyses.find(({ kind }) => kind === 'grouping') ?? NEW_GROUPS;
}

/** Correspondence analysis places rows and columns of a table, not finds: it makes no map of kin. */
export function axesOf(analyses: readonly StudyAnalysis[]): StudyAnalysis {
  return analyses.find(({ kind, method }) => kind === 'ordination' && method !== 'ca') ?? NEW_AXES;
}

/** The study with other options of the map. */
export function withAxes(
  now: Workspace,
  options: Readonly<Record<string, unknown>>,
  attributes: readonly AttributeView[],
): Workspace {
  const { analyses } = now.study;
  return withAnalysis(now, aligned(withOptions(axesOf(analyses), options), groupsOf(analyses), attributes));
}

/** Options that grouping and ordination must share, so that both show one and the same dissimilarity. */
const SHARED = [
  'of',
  'weights',
  'attributeWeights',
  'mode',
  'intervals',
  'ordinal',
  'scaling',
  'minimumOverlap',
];

/** The map of the same dissimilarity as the groups. */
export function aligned(
  axes: StudyAnalysis,
  groups: StudyAnalysis,
  attributes: readonly AttributeView[],
): StudyAnalysis {
  const own = Object.entries(axes).filter(([key]) => !SHARED.includes(key));
  const shared = SHARED.filter((key) => groups[key] !== undefined).map((key) => [key, groups[key]] as const);
  const next = fitted(Object.fromEntries([...own, ...shared]) as StudyAnalysis, attributes);
  const over = next.supplementaryAttributes as readonly string[] | undefined;
  const of = (next.of as readonly string[] | undefined) ?? [];
  // What is compared from now on cannot lie over the map as well.
  return over === undefined
    ? next
    : { ...next, supplementaryAttributes: over.filter((id) => !of.includes(id)) };
}

/** Principal components take numbers, multiple correspondence analysis kinds: the others are not asked of them. */
function fitted(axes: StudyAnalysis, attributes: readonly AttributeView[]): StudyAnalysis {
  const of = (axes.of as readonly string[] | undefined) ?? [];
  const takesNumbers = axes.method === 'pca';
  if (of.length === 0 || (!takesNumbers && axes.method !== 'mca')) return axes;
  const isNumber = new Map(
    attributes.map(({ definition }) => [definition.id, ['ratio', 'interval'].includes(definition.scale)]),
  );
  return { ...axes, of: of.filter((id) => isNumber.get(id) === takesNumbers) };
}
