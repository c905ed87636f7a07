import { flagged, readAs } from './notes.ts';
import type { NumericReading } from './reading.ts';
import { plainSigns } from './text.ts';

const PART = '(\\d{1,3}(?:[.,]\\d+)?)';
const DEGREES = new RegExp(
  `^([NSEWO])?\\s*([+-])?${PART}\\s*(?:°|º|deg\\.?|d)?\\s*(?:${PART}\\s*(?:'|min\\.?|m)\\s*)?(?:${PART}\\s*(?:"|''|sec\\.?|s)\\s*)?([NSEWO])?$`,
  'iu',
);

/**
 * Reads a geographical coordinate with degrees, minutes, seconds or the letter of a hemisphere: "45°30'N",
 * "N 45.5", "12° 15' 30\" W". South and west are negative (ISO 6709:2022). "O" is west in French, Italian and
 * Spanish and east in German: it is read as neither, and the cell stays without a number.
 *
 * @returns null for a plain number and for everything else.
 */
export function readDegrees(text: string): NumericReading | null {
  const plain = plainSigns(text);
  const found = plain.length > 40 ? null : DEGREES.exec(plain);
  if (found === null) return null;
  const [, before, sign, degrees = '', minutes, seconds, after] = found;
  const letter = (before ?? after ?? '').toUpperCase();
  if (letter === '' && minutes === undefined && !/[°º]/u.test(plain)) return null;
  if (letter === 'O' || (before !== undefined && after !== undefined)) return null;
  const [d, m, s] = [degrees, minutes, seconds].map((part) => Number((part ?? '0').replace(',', '.')));
  if (m! >= 60 || s! >= 60 || d! > 180) return null;
  const size = d! + m! / 60 + s! / 3600;
  const value = sign === '-' || letter === 'S' || letter === 'W' ? -size : size;
  const contradicts = sign === '-' && letter !== '' && letter !== 'S' && letter !== 'W';
  const step =
    seconds !== undefined ? 1 / 3600 : minutes !== undefined ? 1 / 60 : Number(`1e-${decimals(degrees)}`);
  const why = `"${plain}" read as ${value} degrees`;
  return {
    kind: 'numeric',
    low: value,
    high: value,
    state: 'measured',
    step,
    notes: [
      contradicts ? flagged('degrees', `${why}; the sign contradicts the letter`) : readAs('degrees', why),
    ],
  };
}

const decimals = (text: string): number => /[.,](\d+)$/u.exec(text)?.[1]?.length ?? 0;
