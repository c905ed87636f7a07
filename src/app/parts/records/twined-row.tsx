import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';

export interface Way {
  readonly id: string;
  readonly name: string;
  /** Why the screen cannot say anything yet; undefined when it can. */
  readonly waits?: string;
}

export interface TwinedRowProps {
  readonly ways: readonly Way[];
  readonly open: string;
  readonly onOpen: (id: string) => void;
}

const MIDDLE = 13;
const AMPLITUDE = 6;
/** Length of half a turn in px. */
const HALF = 17;

/** The heading: a row twined as far as the work has come, an upright for each screen. */
export function TwinedRow({ ways, open, onOpen }: TwinedRowProps) {
  const frame = useRef<HTMLElement>(null);
  const [size, setSize] = useState({ width: 600, reach: 300 });
  const reached = ways.findLastIndex((way) => way.waits === undefined);
  useEffect(() => {
    const element = frame.current;
    if (element === null) return;
    const measure = () => {
      const items = [...element.querySelectorAll('li')];
      const last = items[reached];
      const wraps = items.some((item) => item.offsetTop !== items[0]?.offsetTop);
      const width = element.clientWidth;
      setSize({
        width,
        reach: last === undefined ? 0 : wraps ? width * 0.8 : last.offsetLeft + last.offsetWidth * 0.7,
      });
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, [reached]);
  return (
    <nav className="row" aria-label="Screens" ref={frame}>
      <Strands width={size.width} reach={Math.min(size.reach, size.width)} />
      <ol>
        {ways.map((way) => (
          <li key={way.id}>
            <Button
              className={`way ${way.waits === undefined ? '' : 'ahead'}`}
              onPress={() => onOpen(way.id)}
              {...(way.id === open ? { 'aria-current': 'page' as const } : {})}
            >
              {way.name}
            </Button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function Strands({ width, reach }: { width: number; reach: number }) {
  const halves = Math.max(2, Math.floor(reach / HALF));
  const up = MIDDLE - AMPLITUDE;
  const down = MIDDLE + AMPLITUDE;
  const step = (i: number, from: number, to: number) =>
    `M${i * HALF} ${from}C${(i + 0.5) * HALF} ${from} ${(i + 0.5) * HALF} ${to} ${(i + 1) * HALF} ${to}`;
  const end = halves * HALF;
  const loose = Math.min(width, end + 150);
  // In a twined row the strand that leans like \ passes over at every crossing; the strands change places.
  const crossings = Array.from({ length: halves }, (_, i) => ({ i, over: i % 2 === 0 ? 'madder' : 'ink' }));
  const other = (strand: string) => (strand === 'ink' ? 'madder' : 'ink');
  const last = crossings.at(-1)?.over ?? 'ink';
  return (
    <svg viewBox={`0 0 ${width} 26`} preserveAspectRatio="none" aria-hidden="true">
      <g fill="none">
        {crossings.map(({ i, over }) => (
          <g key={i}>
            <path d={step(i, down, up)} stroke={`var(--${other(over)})`} strokeWidth={3.2} />
            <path d={step(i, up, down)} stroke="var(--paper)" strokeWidth={7} />
            <path d={step(i, up, down)} stroke={`var(--${over})`} strokeWidth={3.2} strokeLinecap="round" />
          </g>
        ))}
        <path
          d={`M${end} ${down}C${end + 40} ${down} ${loose - 70} ${down - 9} ${loose - 34} ${down + 12}`}
          stroke={`var(--${last})`}
          strokeWidth={2}
          strokeLinecap="round"
        />
        <path
          d={`M${end} ${up}C${end + 40} ${up} ${loose - 50} ${up - 3} ${loose} ${down + 6}`}
          stroke={`var(--${other(last)})`}
          strokeWidth={2}
          strokeLinecap="round"
        />
      </g>
    </svg>
  );
}
