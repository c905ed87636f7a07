/**
 * Order of labels for people: "Phase 2" before "Phase 10", otherwise by code unit. Free of the
 * machine's locale, so that every machine lists groups in the same order.
 */
export function naturalOrder(a: string, b: string): number {
  const left = a.match(PARTS) ?? [];
  const right = b.match(PARTS) ?? [];
  for (let i = 0; i < Math.min(left.length, right.length); i++) {
    const difference = comparePart(left[i], right[i]);
    if (difference !== 0) return difference;
  }
  return left.length - right.length || compareText(a, b);
}

const PARTS = /\d+|\D+/g;

function comparePart(a: string, b: string): number {
  const bothNumbers = /^\d/.test(a) && /^\d/.test(b);
  return bothNumbers ? Number(a) - Number(b) : compareText(a, b);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
