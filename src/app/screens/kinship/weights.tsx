import { useEffect, useRef, useState } from 'react';
import { Amount } from '../../parts/controls.tsx';
import { percent } from '../../parts/numbers.ts';

export interface BlockWeights {
  readonly structure: number;
  readonly spacing: number;
  readonly fibre: number;
}

const BLOCKS = [
  { id: 'structure', label: 'Structure', colour: 'var(--structure)' },
  { id: 'spacing', label: 'Spacing', colour: 'var(--spacing)' },
  { id: 'fibre', label: 'Fibre', colour: 'var(--fibre)' },
] as const;

export interface WeightsProps {
  readonly value: BlockWeights;
  readonly onChange: (weights: BlockWeights) => void;
  /** Called once when a drag or key press is over. */
  readonly onDone: (weights: BlockWeights) => void;
}

/** How much each of the three blocks counts: three sliders, and a triangle that shows their balance. */
export function Weights({ value, onChange, onDone }: WeightsProps) {
  const sum = value.structure + value.spacing + value.fibre;
  const set = (id: keyof BlockWeights, weight: number): BlockWeights => {
    const next = { ...value, [id]: weight };
    return next.structure + next.spacing + next.fibre > 0 ? next : value;
  };
  return (
    <div className="weights">
      <Triangle value={value} onChange={onChange} onDone={onDone} />
      <div className="stack tight">
        {BLOCKS.map((block) => (
          <Amount
            key={block.id}
            label={block.label}
            value={value[block.id]}
            least={0}
            most={4}
            step={0.1}
            thread={block.colour}
            format={(weight) => `${weight.toFixed(1)} · ${percent(sum === 0 ? 0 : weight / sum)}`}
            onChange={(weight) => onChange(set(block.id, weight))}
            onChangeEnd={(weight) => onDone(set(block.id, weight))}
          />
        ))}
      </div>
    </div>
  );
}

const SIZE = { width: 200, height: 150 };
const CORNERS = { structure: [100, 20], spacing: [22, 130], fibre: [178, 130] } as const;

function place(weights: BlockWeights): readonly [number, number] {
  const sum = weights.structure + weights.spacing + weights.fibre || 1;
  const at = (axis: 0 | 1) =>
    BLOCKS.reduce((total, { id }) => total + (CORNERS[id][axis] * weights[id]) / sum, 0);
  return [at(0), at(1)];
}

/** Weights at a point of the triangle, with the same sum as before so that the sliders stay in range. */
function weightsAt(x: number, y: number): BlockWeights {
  const [[ax, ay], [bx, by], [cx, cy]] = [CORNERS.structure, CORNERS.spacing, CORNERS.fibre];
  const area = (by - cy) * (ax - cx) + (cx - bx) * (ay - cy);
  const a = ((by - cy) * (x - cx) + (cx - bx) * (y - cy)) / area;
  const b = ((cy - ay) * (x - cx) + (ax - cx) * (y - cy)) / area;
  const shares = [a, b, 1 - a - b].map((share) => Math.min(1, Math.max(0, share)));
  const total = shares.reduce((sum, share) => sum + share, 0);
  const [structure, spacing, fibre] = shares.map((share) => Math.round((30 * share) / total) / 10);
  return { structure: structure ?? 1, spacing: spacing ?? 1, fibre: fibre ?? 1 };
}

/** For the pointer alone: the sliders beside it do the same by key. */
function Triangle({ value, onChange, onDone }: WeightsProps) {
  const drawing = useRef<SVGSVGElement>(null);
  const [held, setHeld] = useState(false);
  const latest = useRef(value);
  useEffect(() => {
    latest.current = value;
  }, [value]);
  const move = (event: React.PointerEvent) => {
    const box = drawing.current?.getBoundingClientRect();
    if (box === undefined) return;
    const scale = SIZE.width / box.width;
    const next = weightsAt((event.clientX - box.left) * scale, (event.clientY - box.top) * scale);
    latest.current = next;
    onChange(next);
  };
  const [x, y] = place(value);
  return (
    <svg
      ref={drawing}
      className="triangle"
      viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
      aria-hidden="true"
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        setHeld(true);
        move(event);
      }}
      onPointerMove={(event) => held && move(event)}
      onPointerUp={() => {
        setHeld(false);
        onDone(latest.current);
      }}
    >
      <path d="M100 20 22 130H178Z" fill="var(--paper)" stroke="var(--neutral)" />
      {BLOCKS.map(({ id, colour }) => (
        <line
          key={id}
          x1={CORNERS[id][0]}
          y1={CORNERS[id][1]}
          x2={x}
          y2={y}
          stroke={colour}
          strokeWidth={1 + (6 * value[id]) / (value.structure + value.spacing + value.fibre || 1)}
        />
      ))}
      <circle cx={x} cy={y} r={8} fill="var(--sheet)" stroke="var(--ink)" strokeWidth={2.5} />
      <text x={100} y={12} textAnchor="middle">
        structure
      </text>
      <text x={22} y={146} textAnchor="middle">
        spacing
      </text>
      <text x={178} y={146} textAnchor="middle">
        fibre
      </text>
    </svg>
  );
}
