import { useRef } from 'react';
import { printLevel, printP } from '../../../analyses/phrasing.ts';
import { Choice } from '../controls.tsx';

/** A level at which labels were judged. */
export interface CutLevel {
  readonly level: number;
  readonly asked: boolean;
}

/** A label with how typical the find is of it, and what the analysis says of it at each level. */
export interface CutLabel {
  readonly label: string;
  /** null where nothing could be compared. */
  readonly p: number | null;
  readonly n: number;
  readonly verdicts: ReadonlyMap<number, string>;
}

export interface CutChartProps {
  readonly labels: readonly CutLabel[];
  /** Share of certainty, such as 0.9; one of `levels`. */
  readonly level: number;
  readonly levels: readonly number[];
  readonly onLevel: (level: number) => void;
  /** What a label is, such as "site". */
  readonly what: string;
  /** How often the order of the labels is right, in words; null where they have none. */
  readonly order: string | null;
}

const HEIGHT = 190;
const TICKS = [0.01, 0.05, 0.1, 0.2, 0.5, 1];
/** A square-root scale: the small values decide and need the room. */
const length = (p: number) => Math.sqrt(p) * HEIGHT;

/** What is said at a level -> how the thread looks. */
const LOOKS: Readonly<Record<string, { look: string; stroke: string; width: number; dash?: string }>> = {
  'cannot be excluded': { look: 'stays', stroke: 'var(--structure)', width: 8 },
  excluded: { look: 'falls', stroke: 'var(--neutral)', width: 5 },
  'too few to judge': { look: 'unknown', stroke: 'var(--structure)', width: 3, dash: '4 4' },
};

/**
 * Threads hang from a row, one a label, as long as the find is typical of it; the level is a cut
 * across them. What is said of each label at a level is the analysis's own verdict, never read off the chart.
 */
export function CutChart({ labels, level, levels, onLevel, what, order }: CutChartProps) {
  const frame = useRef<HTMLDivElement>(null);
  const cut = length(1 - level);
  const moveTo = (clientY: number) => {
    const box = frame.current?.getBoundingClientRect();
    if (box === undefined) return;
    const away = (one: number) => Math.abs(length(1 - one) - (clientY - box.top));
    onLevel(levels.reduce((best, one) => (away(one) < away(best) ? one : best)));
  };
  return (
    <div className="cut-chart stack">
      <div className="level">
        <Choice
          label="Level of the cut"
          options={levels.map((one) => ({ id: String(one), label: printLevel(one) }))}
          value={String(level)}
          onChange={(id) => onLevel(Number(id))}
        />
      </div>
      <div className="cut-scroll">
        <div className="cut-scale" aria-hidden="true" style={{ height: HEIGHT }}>
          {TICKS.map((tick) => (
            <span key={tick} style={{ top: length(tick) }}>
              {tick}
            </span>
          ))}
        </div>
        <div
          className="cut-threads"
          ref={frame}
          style={{ gridTemplateColumns: `repeat(${labels.length}, minmax(62px, 96px))` }}
        >
          {labels.map((one) => {
            const verdict = one.verdicts.get(level) ?? 'too few to judge';
            const { look, stroke, width, dash } = LOOKS[verdict] ?? LOOKS['too few to judge'];
            return (
              <div key={one.label} className={`cut-label ${look}`}>
                <svg width="14" height={HEIGHT} aria-hidden="true">
                  <line
                    x1={7}
                    x2={7}
                    y1={0}
                    y2={one.p === null ? HEIGHT : Math.max(2, length(one.p))}
                    stroke={stroke}
                    strokeWidth={width}
                    {...(dash === undefined ? {} : { strokeDasharray: dash })}
                  />
                </svg>
                <span className="cut-name">{one.label}</span>
                <span className="small soft">{one.p === null ? 'nothing in common' : printP(one.p)}</span>
                <span className="small soft">n = {one.n}</span>
                <span className="small soft">
                  {verdict === 'too few to judge' ? 'too few to exclude' : verdict}
                </span>
              </div>
            );
          })}
          <div
            className="cut-line"
            aria-hidden="true"
            style={{ top: cut - 10 }}
            onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
            onPointerMove={(event) => event.buttons > 0 && moveTo(event.clientY)}
          />
        </div>
      </div>
      <p className="small soft">
        Length: how typical the find is of each {what} (p value, square-root scale). Threads that reach the
        cut cannot be excluded at {printLevel(level)}; dashed: too few to exclude, so that they stay as well.
        {order === null ? '' : ` From the left in order of likelihood: ${order}.`}
      </p>
    </div>
  );
}
