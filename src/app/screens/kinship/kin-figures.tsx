import { useMemo, useState } from 'react';
import type { Figure } from '../../../analyses/contract.ts';
import { OUTLINE, SUPPLEMENTARY } from '../../../analyses/ordination/figures.ts';
import { ordinationOptions } from '../../../analyses/ordination/options.ts';
import { printLevel } from '../../../analyses/phrasing.ts';
import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import { escapeText } from '../../../analyses/shared/figure/style.ts';
import type { AnalysisResult } from '../../../study/results/results.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import { fileStem } from '../../files.ts';
import { fabricAttribute } from '../../parts/asking/attribute-options.ts';
import { Check, Choice, Toggles } from '../../parts/controls.tsx';
import { brushed } from '../../parts/pictures/brush.ts';
import { type FigureSide, FigureView } from '../../parts/pictures/figure.tsx';
import { kinMap } from '../../parts/pictures/kin-map.ts';
import { aboutRecord, mapPoints, positionsOf } from '../../parts/pictures/map-points.ts';
import { pickedAfter } from '../../parts/records/picked-panel.tsx';
import { useLabels } from '../../parts/use-labels.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { withAxes } from './kin-axes.ts';
import type { Nearest } from './use-nearest.ts';

export interface KinFiguresProps {
  readonly grouping: AnalysisResult | null;
  readonly ordination: AnalysisResult | null;
  /** While a weight is dragged: the group of each record's nearest medoid. */
  readonly nearest: Nearest | null;
}

const FIGURES: readonly { readonly id: string; readonly label: string }[] = [
  { id: 'map', label: 'Map' },
  { id: 'variables', label: 'What the axes are made of' },
  { id: 'matrix', label: 'All against all' },
  { id: 'tree', label: 'Tree' },
  { id: 'silhouette', label: 'How well each fits' },
  { id: 'choice', label: 'How many groups' },
  { id: 'together', label: 'Whatever the method' },
];

/** Which tables stand behind which figure. */
const TABLES: Readonly<Record<string, string>> = {
  silhouette: 'membership',
  choice: 'choice',
  together: 'sides',
  tree: 'membership',
  matrix: 'membership',
};

/** What a map of another kind than by dissimilarities rests on. */
const SPREAD_BY: Readonly<Record<string, string>> = {
  pca: 'their numbers',
  mca: 'their kinds',
  mixed: 'their numbers and kinds',
};

const methodOf = (ordination: AnalysisResult | null) =>
  String((ordination?.options as { method?: unknown } | undefined)?.method ?? 'pcoa');

/** The pictures of kinship; a pick in one is a pick in all. */
export function KinFigures({ grouping, ordination, nearest }: KinFiguresProps) {
  const { workspace, view, picked, pick, change } = useWorkbench();
  const [shown, setShown] = useState('map');
  const [by, setBy] = useState('group');
  // Kept here, since figures come and go while groups are made anew.
  const [side, setSide] = useState<FigureSide>('figure');
  const names = useMemo(() => namingAttributes(view?.attributes ?? []), [view]);
  const labels = useLabels(names.all);
  const stem = fileStem(workspace.study.title);
  const unit = view?.unit ?? 'fragment';
  const groups = useMemo(
    () =>
      nearest === null
        ? membershipOf(grouping)
        : new Map([...nearest].map(([id, group]) => [id, String(group + 1)])),
    [grouping, nearest],
  );
  const called = useMemo(() => namesOfGroups(grouping), [grouping]);
  const outlined = by !== 'group' && (ordination?.options as { by?: unknown } | undefined)?.by === by;
  const map = useMemo(() => {
    const positions = positionsOf(ordination);
    if (positions === null) return null;
    const points = mapPoints(positions, labels, names.said, (id, row) =>
      by === 'group' ? groupLabel(groups.get(id), called) : (labels?.labels[by]?.[row ?? -1] ?? ''),
    );
    const said = names.kinds.find(({ id }) => id === by)?.label.toLowerCase() ?? 'group';
    const drawn = kinMap({
      ...{ points, axes: positions.axes, by: by === 'group' ? groupsSaid(grouping) : said, picked, unit },
      ...(by === 'group'
        ? { order: [...called.keys()].map((group) => groupLabel(group, called)) }
        : labels === null
          ? {}
          : { order: labels.orders[by] }),
      spreadBy: SPREAD_BY[methodOf(ordination)] ?? 'how unlike they are',
    });
    return withSupplementary(outlined ? withOutlines(drawn, ordination) : drawn, ordination);
  }, [ordination, grouping, labels, names, by, groups, called, picked, unit, outlined]);
  const available = FIGURES.filter(({ id }) =>
    id === 'map' ? map !== null : figureOf(id, grouping, ordination) !== undefined,
  );
  const current = available.some(({ id }) => id === shown) ? shown : (available[0]?.id ?? 'map');
  const drawn = figureOf(current, grouping, ordination) ?? null;
  const figure = useMemo(() => {
    if (current === 'map') return map;
    if (drawn === null) return null;
    const rows = new Map(labels?.ids.map((id, row) => [id, row]));
    const about = (id: string) => aboutRecord(labels, names.said, rows.get(id));
    return brushed(drawn, picked, about);
  }, [current, map, drawn, labels, names, picked]);
  const onPick = (ids: readonly string[], add: boolean) => pick(pickedAfter(picked, ids, add));
  if (figure === null)
    return (
      <p className="soft">
        {grouping === null
          ? 'The finds are being compared.'
          : 'There is nothing to draw; see what can be said.'}
      </p>
    );
  const tableName = TABLES[current] ?? '';
  const table =
    current === 'map' || current === 'variables'
      ? ordination?.tables[current === 'map' ? 'coordinates' : 'variables']
      : grouping?.tables[tableName];
  return (
    <div className="stack">
      <div className="line apart">
        <Toggles label="Which figure" value={current} options={available} onChange={setShown} />
        {current === 'map' ? (
          <div className="by">
            <Choice
              label="Symbols show"
              value={by}
              options={[
                { id: 'group', label: 'group' },
                ...names.kinds.map(({ id, label }) => ({ id, label: label.toLowerCase() })),
              ]}
              onChange={setBy}
            />
            {by === 'group' ? null : (
              <Check
                value={outlined}
                onChange={(on) =>
                  change(
                    (now) => withAxes(now, { by: on ? by : undefined }, view?.attributes ?? []),
                    on ? 'outline what the symbols show' : 'no outlines',
                  )
                }
              >
                with hulls and ellipses
              </Check>
            )}
          </div>
        ) : null}
      </div>
      {nearest === null || current !== 'map' ? null : (
        <p className="small soft" role="status">
          As you move: each find with the nearest of the present typical finds. Let go, and groups are made
          anew.
        </p>
      )}
      <FigureView
        key={current}
        figure={figure}
        name={`${stem}.kinship.${current}`}
        {...(table === undefined ? {} : { table, ...(current === 'variables' ? {} : { pickBy: 'id' }) })}
        side={side}
        onSide={setSide}
        picked={picked}
        onPick={onPick}
        {...(current === 'map' ? { height: 540 } : {})}
      />
    </div>
  );
}

/** Lays what the ordination has placed beside the records over their map. */
function withSupplementary(map: Figure, ordination: AnalysisResult | null): Figure {
  const over = (ordination?.figures.map?.data ?? []).filter(
    (trace) => (trace as { readonly meta?: unknown }).meta === SUPPLEMENTARY,
  );
  if (over.length === 0) return map;
  return {
    ...map,
    data: [...map.data, ...over],
    caption: `${map.caption} Over them, without a say in the axes: centres of kinds (open diamonds) and directions in which numbers grow (dashed).`,
  };
}

/** The hulls and ellipses of the ordination below the points, in the colours that the map gives their labels. */
function withOutlines(map: Figure, ordination: AnalysisResult | null): Figure {
  const outlines = (ordination?.figures.map?.data ?? []).filter(({ meta }) => meta === OUTLINE);
  const coloured = outlines.map((outline) => {
    const label = escapeText(String(outline.legendgroup));
    const own = map.data.find(({ name }) => String(name).replace(/ \(\d+\)$/, '') === label);
    const color = (own?.marker as { readonly color?: string } | undefined)?.color ?? GROUND.neutral;
    const isHollow = color === GROUND.sheet;
    return { ...outline, line: { ...(outline.line as object), color: isHollow ? GROUND.ink : color } };
  });
  return {
    ...map,
    data: [...coloured, ...map.data],
    caption: `${map.caption} Thin outlines: convex hulls; dotted: ${printLevel(ordinationOptions.shape.confidence.parse(ordination?.options.confidence))} ellipses of resampled centres; of labels with five records or more.`,
  };
}

function figureOf(id: string, grouping: AnalysisResult | null, ordination: AnalysisResult | null) {
  return id === 'variables' ? ordination?.figures.variables : grouping?.figures[id];
}

interface Naming {
  /** Attributes by which the symbols can be told apart. */
  readonly kinds: readonly { readonly id: string; readonly label: string }[];
  /** Attributes said when the pointer rests on a point. */
  readonly said: readonly string[];
  readonly all: readonly string[];
}

const SAID = ['site', 'phase', 'period', 'fibre', 'rowSpacing', 'density1', 'density2'];

function namingAttributes(attributes: readonly AttributeView[]): Naming {
  const kinds = attributes.filter(({ levels }) => levels.length >= 2).map(({ definition }) => definition);
  const first = ['site', 'period', 'phase', 'region', 'kind', 'structure', 'fibre'];
  const rank = (id: string) => (first.includes(id) ? first.indexOf(id) : first.length);
  const sorted = [...kinds].sort((a, b) => rank(a.id) - rank(b.id));
  const said = [fabricAttribute(attributes), ...SAID].filter((id) =>
    attributes.some(({ definition, filled }) => definition.id === id && filled > 0),
  );
  return { kinds: sorted, said, all: [...new Set([...sorted.map(({ id }) => id), ...said])] };
}

function membershipOf(grouping: AnalysisResult | null): ReadonlyMap<string, string> {
  const table = grouping?.tables.membership;
  if (table === undefined) return new Map();
  const [id, group] = ['id', 'group'].map((name) => table.columns.findIndex((column) => column.id === name));
  return new Map(table.rows.map((row) => [String(row[id ?? 0]), String(row[group ?? 0])]));
}

/** "group", with what the table of groups says against them. */
function groupsSaid(grouping: AnalysisResult | null): string {
  return (grouping?.tables.groups?.title ?? 'group').toLowerCase().replace(/^groups/, 'group');
}

/** What each group is called by its marks, by its number. */
function namesOfGroups(grouping: AnalysisResult | null): ReadonlyMap<string, string> {
  const table = grouping?.tables.groups;
  if (table === undefined) return new Map();
  const [group, name] = ['group', 'name'].map((id) => table.columns.findIndex((column) => column.id === id));
  return new Map(table.rows.map((row) => [String(row[group ?? 0]), String(row[name ?? 0])]));
}

/** Number and marks, as the other figures of the groups have them. */
function groupLabel(group: string | undefined, called: ReadonlyMap<string, string>): string {
  if (group === undefined || group === 'none') return '';
  const name = called.get(group);
  return name === undefined ? `group ${group}` : `${group} ${name}`;
}
