import { comparisonOptions, skewedOption } from '../../../analyses/shared/options/comparison.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import { withOptions } from '../../parts/asking/settings.ts';
import { type StudyAnalysis, type Workspace, withAnalysis } from '../../state/workspace.ts';

/** The grouping and the ordination that the Kinship screen shows, and how the one follows the other. */

const NEW_GROUPS: StudyAnalysis = { id: 'groups', kind: 'grouping' };
const NEW_AXES: StudyAnalysis = { id: 'axes', kind: 'ordination' };

/** Options of how finds are compared: grouping and ordination that share them show one and the same dissimilarity. */
const COMPARED = { ...comparisonOptions, skewed: skewedOption } as const;
const COMPARISON = Object.keys(COMPARED) as readonly (keyof typeof COMPARED)[];

/** The study's groups; where it asks for none, those of what its map compares. */
export function groupsOf(analyses: readonly StudyAnalysis[]): StudyAnalysis {
  const asked = analyses.find(({ kind }) => kind === 'grouping');
  return asked ?? { ...NEW_GROUPS, ...comparisonOf(mapOf(analyses) ?? NEW_AXES) };
}

/** Correspondence analysis places rows and columns of a table, not finds: it makes no map of kin. */
function mapOf(analyses: readonly StudyAnalysis[]): StudyAnalysis | undefined {
  return analyses.find(({ kind, method }) => kind === 'ordination' && method !== 'ca');
}

/** The study's map as it asks for it; where it asks for none, that of what its groups compare. */
export function axesOf(
  analyses: readonly StudyAnalysis[],
  attributes: readonly AttributeView[],
): StudyAnalysis {
  return mapOf(analyses) ?? aligned(NEW_AXES, groupsOf(analyses), attributes);
}

/** The study with other options of the map. */
export function withAxes(
  now: Workspace,
  options: Readonly<Record<string, unknown>>,
  attributes: readonly AttributeView[],
): Workspace {
  const { analyses } = now.study;
  const before = axesOf(analyses, attributes);
  const groups = groupsOf(analyses);
  const next = withOptions(before, options);
  const alike = apartIn(before, groups, attributes).length === 0;
  return withAnalysis(now, alike ? aligned(next, groups, attributes) : fitted(next, attributes));
}

/** The study with other groups; a map of the same dissimilarity stays one, a map of another is left as it is asked. */
export function withGroups(
  now: Workspace,
  options: Readonly<Record<string, unknown>>,
  attributes: readonly AttributeView[],
): Workspace {
  const { analyses } = now.study;
  const groups = withOptions(groupsOf(analyses), options);
  const axes = axesOf(analyses, attributes);
  const alike = apartIn(axes, groupsOf(analyses), attributes).length === 0;
  return withAnalysis(withAnalysis(now, groups), alike ? aligned(axes, groups, attributes) : axes);
}

/** The study with the map drawn of what the groups compare. */
export function withAlike(now: Workspace, attributes: readonly AttributeView[]): Workspace {
  const { analyses } = now.study;
  return withAnalysis(now, aligned(axesOf(analyses, attributes), groupsOf(analyses), attributes));
}

/** In what the map compares finds otherwise than the groups, by the titles of the options; none where both are alike. */
export function apartIn(
  axes: StudyAnalysis,
  groups: StudyAnalysis,
  attributes: readonly AttributeView[],
): readonly string[] {
  const [own, alike] = [axes, aligned(axes, groups, attributes)].map(settled);
  return COMPARISON.filter((name) => own?.[name] !== alike?.[name]).map(
    (name) => COMPARED[name].meta()?.title ?? name,
  );
}

/** How finds are compared in the end, defaults and all, each option as a text that can be held against another. */
function settled(analysis: StudyAnalysis): Readonly<Record<string, string>> {
  return Object.fromEntries(
    COMPARISON.map((name) => {
      const { success, data } = COMPARED[name].safeParse(analysis[name]);
      return [name, JSON.stringify(success ? inOrder(data) : analysis[name])];
    }),
  );
}

/** Neither the order of attributes nor that of weights matters, and a weight of 1 is what is not named. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return [...value].sort();
  if (typeof value !== 'object' || value === null) return value;
  return Object.entries(value)
    .filter(([, weight]) => weight !== 1)
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

function comparisonOf(analysis: StudyAnalysis): Readonly<Record<string, unknown>> {
  return Object.fromEntries(
    COMPARISON.flatMap((name) => (analysis[name] === undefined ? [] : [[name, analysis[name]]])),
  );
}

/** The map of the same dissimilarity as the groups. */
function aligned(
  axes: StudyAnalysis,
  groups: StudyAnalysis,
  attributes: readonly AttributeView[],
): StudyAnalysis {
  const own = Object.fromEntries(
    Object.entries(axes).filter(([key]) => !COMPARISON.some((name) => name === key)),
  );
  const next = fitted({ ...own, ...comparisonOf(groups) } as StudyAnalysis, attributes);
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
