import type { Figure } from '../../../analyses/contract.ts';
import type { AnalysisResult } from '../../../study/results/results.ts';
import type { TypesView } from '../../engine/views/types.ts';
import { Amount } from '../../parts/controls.tsx';
import { readable } from '../../parts/numbers.ts';
import { FigureView } from '../../parts/pictures/figure.tsx';

/** A limit on its way from one place to another. */
export interface Drag {
  readonly attribute: string;
  readonly from: number;
  readonly to: number;
}

export interface CutsProps {
  /** The rules as they are saved; a limit being dragged still stands at its old place. */
  readonly cuts: TypesView['cuts'];
  readonly drag: Drag | null;
  readonly result: AnalysisResult | null;
  /** While a limit is dragged, and when it is let go. */
  readonly onDrag: (drag: Drag) => void;
  readonly onMove: (drag: Drag) => void;
  readonly stem: string;
}

/** Each cut of the rules as a slider over the density of its readings. */
export function Cuts({ cuts, drag, result, onDrag, onMove, stem }: CutsProps) {
  const now = (attribute: string, cut: number) =>
    drag?.attribute === attribute && drag.from === cut ? drag.to : cut;
  if (cuts.length === 0) return <p className="soft">The rules set no limit on a number.</p>;
  return (
    <div className="stack">
      {cuts.map((one) => (
        <div key={one.attribute} className="stack">
          {one.cuts.map((cut, place) => (
            // By place: a slider that has moved its limit must stay the one that has the focus.
            <Cut
              key={place}
              of={one}
              cut={cut}
              at={now(one.attribute, cut)}
              onDrag={onDrag}
              onMove={onMove}
            />
          ))}
          <Density
            figure={result?.figures[`density ${one.attribute}`]}
            cuts={one.cuts.map((cut) => now(one.attribute, cut))}
            name={`${stem}.density-${one.attribute}`}
          />
        </div>
      ))}
    </div>
  );
}

interface CutProps extends Pick<CutsProps, 'onDrag' | 'onMove'> {
  readonly of: TypesView['cuts'][number];
  readonly cut: number;
  readonly at: number;
}

function Cut({ of, cut, at, onDrag, onMove }: CutProps) {
  const span = Math.max(of.most - of.least, Math.abs(of.most), 1);
  const step = Number((10 ** Math.floor(Math.log10(span) - 2)).toPrecision(1));
  const moved = (to: number): Drag => ({
    attribute: of.attribute,
    from: cut,
    to: Number(to.toFixed(6)),
  });
  const unit = of.unit === '' ? '' : ` ${of.unit}`;
  return (
    <Amount
      label={`Cut of ${of.label}`}
      value={at}
      least={Math.min(cut, Math.floor(of.least / step) * step)}
      most={Math.max(cut, Math.ceil(of.most / step) * step)}
      step={step}
      format={(value) => `${readable(value)}${unit}`}
      thread="var(--madder)"
      onChange={(value) => onDrag(moved(value))}
      onChangeEnd={(value) => onMove(moved(value))}
    />
  );
}

interface DensityProps {
  readonly figure: Figure | undefined;
  readonly cuts: readonly number[];
  readonly name: string;
}

/** The figure of the last answer, with the cuts where they stand now. */
function Density({ figure, cuts, name }: DensityProps) {
  if (figure === undefined) return <p className="soft">The density comes with the first answer.</p>;
  const shapes = ((figure.layout.shapes as readonly Record<string, unknown>[] | undefined) ?? []).filter(
    ({ line }) => (line as { dash?: string } | undefined)?.dash !== 'solid',
  );
  const marks = cuts.map((cut) => ({
    type: 'line',
    xref: 'x',
    yref: 'paper',
    x0: cut,
    x1: cut,
    y0: 0,
    y1: 1,
    line: { color: '#8C2418', width: 1.5, dash: 'solid' },
  }));
  return (
    <FigureView
      figure={{ ...figure, layout: { ...figure.layout, shapes: [...shapes, ...marks] } }}
      name={name}
    />
  );
}
