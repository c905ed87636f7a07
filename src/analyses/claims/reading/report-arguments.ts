import { type DecimalMark, NUMBER, printedValue } from './numbers.ts';
import { DEGREES_ABROAD } from './symbols.ts';
import type { Quantity, TestMethod } from './terms.ts';
import type { TextPart } from './text-part.ts';

const DEGREES = String.raw`(?:[dD]\.?\s?[fF]s?\b\.?|[dD]egrees of freedom|${DEGREES_ABROAD}(?![\p{L}\d]))`;
const AND = String.raw`(?:;|,\s|and|und|et|og|y|e|\/)`;
const AFTER = new RegExp(
  String.raw`[(\[]?\s*(?:with|on)?\s*(?<![=<>:≈≤≥]\s*)(?<![-\d.,])(?<first>\d+(?:[.,]\d+)?)(?:\s*${AND}\s*(?<second>\d+(?:[.,]\d+)?))?\s*${DEGREES}\s*[)\]]?`,
  'u',
);
const PAIR = new RegExp(
  String.raw`(?<![A-Za-z])${DEGREES}\s*[=:]?\s*[(\[]?(?<first>${NUMBER})(?:\s*${AND}\s*|,(?=\d+(?:\.\d+)?\s*[;,)]))(?<second>${NUMBER})[)\]]?(?=\s*(?:[,;)\]¦]|$))`,
  'u',
);

/** Degrees of freedom that stand apart from their statistic: "df = 2, 27", "(38 df)", "with 2 and 27 d.f.". */
export function degreesApart(
  text: string,
  method: TestMethod | undefined,
  mark: DecimalMark,
): { readonly part: TextPart; readonly used: string } | null {
  const match = (method === 'F' ? PAIR.exec(text) : null) ?? AFTER.exec(text);
  if (match === null) return null;
  const { first, second } = match.groups ?? {};
  const values = [first, second].flatMap((one) =>
    one === undefined ? [] : (printedValue(one, 'df', mark) ?? []),
  );
  if (values.length === 0) return null;
  return { part: { quantity: 'df', values, ...(method === undefined ? {} : { method }) }, used: match[0] };
}

/** What stands in brackets behind a statistic: degrees of freedom, or the numbers of records of rank tests. */
export function argumentParts(inner: string, method: TestMethod | undefined, mark: DecimalMark): TextPart[] {
  if (inner === '') return [];
  const pieces = piecesOf(inner, method);
  const sizes = pieces.filter((piece) => /^[nN]/.test(piece));
  const plain = pieces.filter((piece) => !/^[nN]/.test(piece));
  const named = method === undefined ? {} : { method };
  const values = (list: readonly string[], quantity: Quantity) =>
    list.flatMap(
      (piece) => printedValue(piece.replace(/\s*(?:df|d\.f\.)\.?$/i, '').trim(), quantity, mark) ?? [],
    );
  const parts: TextPart[] = [];
  const ranks = method === 'U' || method === 'W' || method === 'signed-rank';
  if (ranks) {
    for (const value of values(plain, 'n')) parts.push({ quantity: 'n', values: [value] });
  } else if (method === 'F' || plain.length === 1) {
    const found = values(plain, 'df');
    if (found.length > 0) parts.push({ quantity: 'df', values: found.slice(0, 2), ...named });
  } else if (plain.length === 2) {
    // "χ²(4, 60)": degrees of freedom and the number of records.
    const [df, n] = [values(plain.slice(0, 1), 'df'), values(plain.slice(1), 'n')];
    if (df.length > 0) parts.push({ quantity: 'df', values: df, ...named });
    if (n.length > 0) parts.push({ quantity: 'n', values: n });
  }
  for (const value of values(sizes, 'n')) parts.push({ quantity: 'n', values: [value] });
  return parts;
}

/** Parts of "2, 27", "2;27", "1,5; 29,6", "4, N = 60". */
function piecesOf(inner: string, method: TestMethod | undefined): string[] {
  const split = (by: RegExp) => inner.split(by).map((piece) => piece.trim());
  if (/;/.test(inner)) return split(/;/);
  if (/\s(?:and|und|et)\s/.test(inner)) return split(/\s(?:and|und|et)\s/);
  if (/,\s/.test(inner)) return split(/,\s+/);
  if (/\//.test(inner)) return split(/\//);
  const parts = split(/,/);
  // "F(1,5,29,6)": decimal commas and a comma between.
  if (parts.length === 4) return [`${parts[0]},${parts[1]}`, `${parts[2]},${parts[3]}`];
  const single = method === 't' || method === 'r' || method === 'rho' || method === 'tau' || method === 'z';
  return parts.length === 2 && single && !/[nN]/.test(inner) ? [inner] : parts;
}
