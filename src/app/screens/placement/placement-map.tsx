import { useMemo, useState } from 'react';
import type { AnalysisResult } from '../../../study/results/results.ts';
import { fileStem } from '../../files.ts';
import { fabricAttribute } from '../../parts/asking/attribute-options.ts';
import { Choice } from '../../parts/controls.tsx';
import { FigureView } from '../../parts/pictures/figure.tsx';
import { kinMap } from '../../parts/pictures/kin-map.ts';
import { mapPoints, positionsOf } from '../../parts/pictures/map-points.ts';
import { pickedAfter } from '../../parts/records/picked-panel.tsx';
import { useLabels } from '../../parts/use-labels.ts';
import { useWorkbench } from '../../state/workbench.tsx';

const KINDS = ['site', 'period', 'phase', 'fibre'];

/** The comparanda on their first two axes, with the find and where it may lie. */
export function PlacementMap({ result, name }: { result: AnalysisResult | null; name: string }) {
  const { workspace, view, picked, pick } = useWorkbench();
  const [by, setBy] = useState('site');
  const said = useMemo(() => [fabricAttribute(view?.attributes ?? []), ...KINDS], [view]);
  const kinds = useMemo(
    () =>
      said.flatMap(
        (id) =>
          view?.attributes.filter(({ definition, levels }) => definition.id === id && levels.length > 1) ??
          [],
      ),
    [view, said],
  );
  const labels = useLabels(said);
  const unit = view?.unit ?? 'fragment';
  const figure = useMemo(() => {
    const positions = positionsOf(result);
    if (positions === null) return null;
    const table = result?.tables.position;
    const points = mapPoints(positions, labels, said, (_, row) => labels?.labels[by]?.[row ?? -1] ?? '');
    const cells = table?.rows ?? [];
    const at = (id: string) => table?.columns.findIndex((column) => column.id === id) ?? -1;
    const place = (row: (typeof cells)[number] | undefined) =>
      [Number(row?.[at('axis1')]), Number(row?.[at('axis2')])] as const;
    const [find, ...cloud] = cells;
    const [x, y] = place(find);
    return kinMap({
      points,
      axes: positions.axes,
      by: kinds.find(({ definition }) => definition.id === by)?.definition.label.toLowerCase() ?? by,
      ...(labels === null ? {} : { order: labels.orders[by] }),
      picked,
      unit,
      finds: find === undefined ? [] : [{ name, x, y, cloud: cloud.map(place) }],
    });
  }, [result, labels, said, by, kinds, picked, unit, name]);
  if (figure === null)
    return (
      <p className="soft">
        {result === null
          ? 'The map comes with the first measurement.'
          : 'No map could be drawn for these attributes.'}
      </p>
    );
  const table = result?.tables.coordinates;
  return (
    <FigureView
      figure={figure}
      name={`${fileStem(workspace.study.title)}.placement.${fileStem(name)}`}
      {...(table === undefined ? {} : { table, pickBy: 'id' })}
      picked={picked}
      onPick={(ids, add) => pick(pickedAfter(picked, ids, add))}
    >
      <div className="by">
        <Choice
          label="Symbols show"
          value={by}
          options={kinds.map(({ definition }) => ({
            id: definition.id,
            label: definition.label.toLowerCase(),
          }))}
          onChange={setBy}
        />
      </div>
    </FigureView>
  );
}
