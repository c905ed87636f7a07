/**
 * The fringe: from a bar hang threads, one a part, and length is the share. A thread that is not
 * observed is dashed at full length, never short.
 */
export interface Thread {
  readonly label: string;
  /** 0 to 1; null when it could not be observed. */
  readonly share: number | null;
  readonly colour?: string;
}

export interface FringeProps {
  readonly threads: readonly Thread[];
  /** Says in words what the fringe shows. */
  readonly label: string;
  readonly height?: number;
  readonly pitch?: number;
}

export function Fringe({ threads, label, height = 34, pitch = 12 }: FringeProps) {
  const width = pitch * threads.length + 4;
  return (
    <svg
      className="fringe"
      width={width}
      height={height + 4}
      viewBox={`0 0 ${width} ${height + 4}`}
      role="img"
      aria-label={label}
    >
      {threads.map((thread, i) => {
        const x = 2 + pitch * (i + 0.5);
        const length = thread.share === null ? height : Math.max(0, thread.share) * height;
        return (
          <line
            key={thread.label}
            x1={x}
            x2={x}
            y1={2}
            y2={2 + length}
            stroke={thread.share === null ? 'var(--neutral)' : (thread.colour ?? 'var(--ink)')}
            strokeWidth={thread.share === null ? 1.5 : pitch * 0.5}
            {...(thread.share === null ? { strokeDasharray: '3 3' } : {})}
          />
        );
      })}
      <line x1={0} x2={width} y1={1.5} y2={1.5} stroke="var(--ink)" strokeWidth={3} />
    </svg>
  );
}

/** The small S-leaning crossing that marks where a person decides. */
export function Crossing({ colour = 'var(--madder)', size = 14 }: { colour?: string; size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 14 14" aria-hidden="true">
      <path
        d="M1 11C5 11 5.4 9 6.2 7.9M7.8 6.1C8.6 5 9 3 13 3"
        fill="none"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      <path d="M1 3c7 0 5 8 12 8" fill="none" stroke={colour} strokeWidth="2.4" />
    </svg>
  );
}
