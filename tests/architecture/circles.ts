/** Groups of files that import each other round and round (Tarjan 1972, SIAM J. Comput. 1:146), each sorted. */
export function circlesOf(imports: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const found: string[][] = [];
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const path: string[] = [];
  const visit = (file: string): number => {
    order.set(file, order.size);
    let low = order.get(file)!;
    path.push(file);
    for (const next of imports.get(file) ?? []) {
      if (!imports.has(next)) continue;
      if (!order.has(next)) low = Math.min(low, visit(next));
      else if (path.includes(next)) low = Math.min(low, order.get(next)!);
    }
    lowest.set(file, low);
    if (low === order.get(file)) {
      const circle = path.splice(path.indexOf(file));
      if (circle.length > 1) found.push(circle.sort());
    }
    return low;
  };
  for (const file of imports.keys()) if (!order.has(file)) visit(file);
  return found;
}
