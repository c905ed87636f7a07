import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Figure, ResultTable } from '../../../analyses/contract.ts';
import { legendBeyond } from '../../../report/drawing/legend.ts';
import { namesAt } from '../../../report/drawing/names-at.ts';
import { type FigureWidth, measuresOf } from '../../../report/files/measures.ts';
import { Button, Toggles } from '../controls.tsx';
import { ResultTableView } from '../result-table.tsx';
import { loadPlotly, PLOTLY_CONFIG, type PlotlyElement, type PlotlyEvent } from './plotly.ts';
import { FIGURE_FORMATS, saveFigure } from './save-figure.ts';

export interface FigureProps {
  readonly figure: Figure;
  /** Stem of the file names. */
  readonly name: string;
  readonly table?: ResultTable;
  readonly height?: number;
  /** Points carry the id of their record as `customdata`. */
  readonly onPick?: (ids: readonly string[], add: boolean) => void;
  readonly onHover?: (id: string | null) => void;
  readonly picked?: readonly string[];
  readonly pickBy?: string;
  readonly children?: ReactNode;
  /** Figure or table, where that outlasts the figure. */
  readonly side?: FigureSide;
  readonly onSide?: (side: FigureSide) => void;
}

export type FigureSide = 'figure' | 'table';

/** A figure with its table and its files: the same data three ways. */
export function FigureView(props: FigureProps) {
  const { figure, name, table, height, onPick, onHover, picked, pickBy, children } = props;
  const [own, setOwn] = useState<FigureSide>('figure');
  const [side, setSide] = [props.side ?? own, props.onSide ?? setOwn];
  return (
    <figure className="figure stack">
      <div className="line apart">
        <div className="line">
          {table === undefined ? null : (
            <Toggles
              label="Show as"
              value={side}
              options={[
                { id: 'figure', label: 'Figure' },
                { id: 'table', label: 'Table' },
              ]}
              onChange={(id) => setSide(id === 'table' ? 'table' : 'figure')}
            />
          )}
          {children}
        </div>
        <FigureFiles figure={figure} name={name} />
      </div>
      {side === 'figure' || table === undefined ? (
        <Drawing
          figure={figure}
          {...(height === undefined ? {} : { height })}
          {...(onPick === undefined ? {} : { onPick })}
          {...(onHover === undefined ? {} : { onHover })}
        />
      ) : (
        <ResultTableView
          table={table}
          height={height ?? 420}
          {...(pickBy === undefined ? {} : { pickBy })}
          {...(picked === undefined ? {} : { picked })}
          {...(onPick === undefined ? {} : { onPick: (id: string, add: boolean) => onPick([id], add) })}
        />
      )}
      <figcaption>{figure.caption}</figcaption>
    </figure>
  );
}

/** The figure as files for print: one column or both wide, white ground, the caption beneath. */
export function FigureFiles({ figure, name, of = 'the figure' }: FigureFilesProps) {
  const measures = measuresOf(figure);
  const [chosen, setMeasure] = useState<FigureWidth>(174);
  const measure = measures.includes(chosen) ? chosen : 174;
  return (
    <div className="line">
      <Toggles
        label={`Width of the files of ${of}`}
        value={String(measure)}
        options={measures.map((one) => ({ id: String(one), label: `${one} mm` }))}
        onChange={(id) => setMeasure(measures.find((one) => String(one) === id) ?? 174)}
      />
      {FIGURE_FORMATS.map((format) => (
        <Button
          key={format}
          look="plain small"
          label={`Save ${of} as ${format.toUpperCase()}`}
          onPress={() => void saveFigure(figure, name, format, measure)}
        >
          {format.toUpperCase()}
        </Button>
      ))}
    </div>
  );
}

interface FigureFilesProps {
  readonly figure: Figure;
  readonly name: string;
  /** Which figure, for those who hear the buttons alone. */
  readonly of?: string;
}

interface DrawingProps {
  readonly figure: Figure;
  readonly height?: number;
  readonly onPick?: (ids: readonly string[], add: boolean) => void;
  readonly onHover?: (id: string | null) => void;
}

export function Drawing({ figure, height, onPick, onHover }: DrawingProps) {
  const place = useRef<HTMLElement>(null);
  const acts = useRef({ onPick, onHover });
  acts.current = { onPick, onHover };
  const [fault, setFault] = useState(false);
  const tall = height ?? Number(figure.layout.height ?? 400);
  useEffect(() => {
    const element = place.current;
    if (element === null) return;
    let current = true;
    let wired = false;
    const draw = async () => {
      const plotly = await loadPlotly();
      if (!current || element.clientWidth === 0) return;
      const high = tall + legendBeyond(figure.data, figure.layout, element.clientWidth);
      element.style.height = `${high}px`;
      const layout = {
        ...structuredClone(figure.layout),
        width: element.clientWidth,
        height: high,
        autosize: false,
        ...besideThePlot(figure.layout),
      };
      const { data } = namesAt({ ...figure, layout }, { width: element.clientWidth, height: high });
      const drawn = await plotly.react(element, structuredClone(data) as object[], layout, PLOTLY_CONFIG);
      if (wired || !current) return;
      wired = true;
      for (const name of ['plotly_click', 'plotly_selected', 'plotly_hover', 'plotly_unhover'])
        drawn.removeAllListeners?.(name);
      listen(drawn, acts);
    };
    draw().catch(() => setFault(true));
    let width = element.clientWidth;
    const observer = new ResizeObserver(() => {
      if (Math.abs(element.clientWidth - width) < 2) return;
      width = element.clientWidth;
      void draw();
    });
    observer.observe(element);
    return () => {
      current = false;
      observer.disconnect();
    };
  }, [figure, tall]);
  if (fault)
    return <p className="notice">The figure could not be drawn here; its table holds the same numbers.</p>;
  return <section ref={place} className="drawing" style={{ height: tall }} aria-label={figure.caption} />;
}

interface Acts {
  readonly current: {
    readonly onPick: DrawingProps['onPick'] | undefined;
    readonly onHover: DrawingProps['onHover'] | undefined;
  };
}

function listen(element: PlotlyElement, acts: Acts): void {
  const ids = (event: PlotlyEvent | null) =>
    (event?.points ?? [])
      .map((point) => point.customdata)
      // A cell of a heat map is two records, any other mark is one.
      .map((one) => (Array.isArray(one) ? one : [one]).filter((id): id is string => typeof id === 'string'))
      .filter((one) => one.length > 0);
  element.on?.('plotly_click', (event) => {
    const press = event?.event;
    const found = ids(event);
    if (found.length > 0)
      acts.current.onPick?.(
        found[0] ?? [],
        press?.shiftKey === true || press?.ctrlKey === true || press?.metaKey === true,
      );
  });
  element.on?.('plotly_selected', (event) => {
    const found = ids(event);
    if (found.length > 0) acts.current.onPick?.([...new Set(found.flat())], false);
  });
  element.on?.('plotly_hover', (event) => acts.current.onHover?.(ids(event)[0]?.[0] ?? null));
  element.on?.('plotly_unhover', () => acts.current.onHover?.(null));
}

/** Room for the buttons that come up under the pointer: in a line above the plot they would lie over the legend. */
const BUTTONS = 34;

function besideThePlot({ margin, modebar }: Figure['layout']) {
  const sides = (margin ?? {}) as { readonly r?: number };
  return {
    modebar: { ...(modebar as object | undefined), orientation: 'v' },
    margin: { ...sides, r: Math.max(sides.r ?? 0, BUTTONS) },
  };
}
