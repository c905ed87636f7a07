import { greatest, least } from '../../numerics/foundation/lists.ts';
import { list, numberOr, type Plain, textOr } from './plain.ts';
import { log10, pow10 } from './powers.ts';

/** An axis that is laid out: from values of the figure to pixels. */
export interface Scale {
  readonly kind: 'linear' | 'log' | 'category';
  readonly categories: readonly string[];
  /** In the axis' own numbers: powers of ten on a log axis, places of categories. */
  readonly range: readonly [number, number];
  /** Pixels at the two ends of the range. */
  readonly ends: readonly [number, number];
}

/** The axis' own number of a value; NaN for what has no place on it. */
export function placeOn(scale: Pick<Scale, 'kind' | 'categories'>, value: unknown): number {
  if (value === null || value === undefined || value === '') return Number.NaN;
  if (scale.kind === 'category') {
    const at = scale.categories.indexOf(String(value));
    return at >= 0 ? at : typeof value === 'number' ? value : Number.NaN;
  }
  const number = typeof value === 'number' ? value : Number(value);
  if (scale.kind === 'log') return number > 0 ? log10(number) : Number.NaN;
  return number;
}

/** Pixel of one of the axis' own numbers. */
export function pixel({ range, ends }: Scale, own: number): number {
  return ends[0] + ((own - range[0]) / (range[1] - range[0])) * (ends[1] - ends[0]);
}

export function pixelOf(scale: Scale, value: unknown): number {
  return pixel(scale, placeOn(scale, value));
}

export interface Tick {
  readonly own: number;
  readonly text: string;
}

/** The ticks of an axis: those that it names, else round steps as dense as the room allows. */
export function ticksOf(axis: Plain, scale: Scale, room: number): readonly Tick[] {
  const [low, high] = [least(scale.range), greatest(scale.range)];
  const within = ({ own }: Tick) => own >= low - 1e-9 && own <= high + 1e-9;
  const named = list(axis.tickvals);
  if (named.length > 0 || axis.tickmode === 'array') {
    const texts = list(axis.ticktext);
    return named
      .map((value, at) => ({ own: placeOn(scale, value), text: textOr(texts[at], textOr(value, '')) }))
      .filter(within);
  }
  if (scale.kind === 'category') return scale.categories.map((text, own) => ({ own, text })).filter(within);
  if (scale.kind === 'log') return logTicks(low, high).filter(within);
  const step = numberOr(axis.dtick, roundStep((high - low) / wanted(axis, room)));
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  const digits = decimals(step);
  return Array.from({ length: Math.max(0, Math.min(count, MOST_TICKS)) }, (_, at) => {
    const own = Number(((first + at) * step).toPrecision(12));
    return { own, text: printed(own, digits, axis) };
  });
}

const MOST_TICKS = 200;

function wanted(axis: Plain, room: number): number {
  const most = numberOr(axis.nticks, 0);
  return most > 0 ? most : Math.min(9, Math.max(4, room));
}

function roundStep(rough: number): number {
  const power = pow10(Math.floor(log10(rough)));
  const share = rough / power;
  return (share <= 1.0001 ? 1 : share <= 2.0001 ? 2 : share <= 5.0001 ? 5 : 10) * power;
}

function decimals(step: number): number {
  for (let digits = 0; digits < 12; digits++)
    if (Math.abs(Number(step.toFixed(digits)) - step) < step * 1e-6) return digits;
  return 12;
}

/** Numbers with the true minus sign; shares as per cent where the axis says so. */
function printed(value: number, digits: number, axis: Plain): string {
  const percent = /^\.(\d)%$/.exec(textOr(axis.tickformat, ''));
  const text = percent === null ? value.toFixed(digits) : `${(value * 100).toFixed(Number(percent[1]))} %`;
  return `${textOr(axis.tickprefix, '')}${text.replace('-', '−')}${textOr(axis.ticksuffix, '')}`;
}

function logTicks(low: number, high: number): readonly Tick[] {
  const digits = high - low > 2.5 ? [1] : [1, 2, 5];
  const ticks: Tick[] = [];
  for (let power = Math.floor(low); power <= Math.ceil(high); power++)
    for (const digit of digits) {
      const value = Number((digit * pow10(power)).toPrecision(3));
      ticks.push({ own: log10(value), text: String(value) });
    }
  return ticks;
}
