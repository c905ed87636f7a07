import { useRef } from 'react';
import { printChance } from '../../analyses/table-numbers.ts';
import { Amount } from './controls.tsx';

/** A label with how typical the find is of it; `why` where there are too few to judge. */
export interface CutLabel {
  readonly label: string;
  readonly p: number | null;
  readonly n: number;
  readonly why?: string;
}

export interface CutChartProps {
  readonly labels: readonly CutLabel[];
  /** Share of certainty, such as 0.9; labels with p above 1 - level cannot be excluded. */
  readonly level: number;
  readonly onLevel: (level: number) => void;
  /** What a label is, such as "site". */
  readonly what: string;
}

const HEIGHT = 190;
const TICKS = [0.01, 0.05, 0.1, 0.2, 0.5, 1];
/** A square-root scale: the small values decide and need the room. */
const length = (p: number) => Math.sqrt(p) * HEIGHT;

/**
 * Threads hang from a row, one a label, as long as the find is typical of it; the level is a cut
 * across them. A thread that reaches the cut cannot be excluded.
 */
export function CutChart({ labels, level, onLevel, what }: CutChartProps) {
  const frame = useRef<HTMLDivElement>(null);
  const alpha = 1 - level;
  const moveTo = (clientY: number) => {
    const box = frame.current?.getBoundingClientRect();
    if (box === undefined) return;
    const share = Math.min(1, Math.max(0, (clientY - box.top) / HEIGHT));
    onLevel(Math.min(0.99, Math.max(0.7, Math.round((1 - share * share) * 100) / 100)));
  };
  return (
    <div className="cut-chart stack">
      <div className="level">
        <Amount
          label="Level of the cut"
          value={Math.round(level * 100)}
          least={70}
          most={99}
          step={1}
          format={(value) => `${value} %`}
          thread="var(--madder)"
          onChange={(value) => onLevel(value / 100)}
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
            const stays = one.p !== null && one.p > alpha;
            return (
              <div
                key={one.label}
                className={`cut-label ${one.p === null ? 'unknown' : stays ? 'stays' : 'falls'}`}
              >
                <svg width="14" height={HEIGHT} aria-hidden="true">
                  {one.p === null ? (
                    <line
                      x1={7}
                      x2={7}
                      y1={0}
                      y2={HEIGHT}
                      stroke="var(--neutral)"
                      strokeWidth={2}
                      strokeDasharray="4 4"
                    />
                  ) : (
                    <line
                      x1={7}
                      x2={7}
                      y1={0}
                      y2={Math.max(2, length(one.p))}
                      stroke={stays ? 'var(--structure)' : 'var(--neutral)'}
                      strokeWidth={stays ? 8 : 5}
                    />
                  )}
                </svg>
                <span className="cut-name">{one.label}</span>
                <span className="small soft">
                  {one.p === null
                    ? (one.why ?? 'too few to judge')
                    : `p ${one.p < 0.001 ? printChance(one.p) : `= ${printChance(one.p)}`}`}
                </span>
                <span className="small soft">n = {one.n}</span>
                <span className="hidden-text">
                  {one.p === null ? 'not judged' : stays ? 'cannot be excluded' : 'excluded at this level'}
                </span>
              </div>
            );
          })}
          <div
            className="cut-line"
            aria-hidden="true"
            style={{ top: length(alpha) - 10 }}
            onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
            onPointerMove={(event) => event.buttons > 0 && moveTo(event.clientY)}
          />
        </div>
      </div>
      <p className="small soft">
        Length: how typical the find is of each {what} (p value, square-root scale). Threads that reach the
        cut cannot be excluded at {Math.round(level * 100)} %; dashed: too few to judge.
      </p>
    </div>
  );
}
