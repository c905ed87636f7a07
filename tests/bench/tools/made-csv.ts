import { createRandom } from '../../../src/numerics/foundation/random.ts';

/** A CSV of fragments of four structures with gaps, invented, for the workbench to open. */
export function madeCsv(fragments: number): Buffer {
  const random = createRandom(5);
  const lines = ['Fragment;Item;Site;Structure;Row spacing (mm);Diameter 1 (mm);Density 1 (/cm);Fibre'];
  const kinds = ['close twining', 'open twining', 'tabby', 'coiled'];
  for (let i = 0; i < fragments; i++) {
    const kind = random.integer(4);
    const number = (scale: number) =>
      random.next() < 0.1 ? '' : ((kind + 1) * scale * (0.6 + random.next())).toFixed(1);
    lines.push(
      [
        `F${i}`,
        `I${i}`,
        ['Ansern', 'Bolquen', 'Cestwig'][random.integer(3)],
        kinds[kind],
        number(4),
        number(0.8),
        number(3),
        ['flax', 'wool', 'lime bast'][random.integer(3)],
      ].join(';'),
    );
  }
  return Buffer.from(lines.join('\n'));
}
