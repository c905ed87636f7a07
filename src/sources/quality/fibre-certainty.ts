import type { Register } from '../../attributes/definition.ts';
import { reachOf } from '../../attributes/method-reach.ts';
import { CERTAINTIES } from '../../cells/reading.ts';
import { termAt } from '../../fragments/accessors.ts';
import type { Column } from '../../fragments/table.ts';
import { atBest } from './fibre-checks.ts';

const FIBRES = ['fibre', 'fibre2'];

/**
 * Lowers the certainty of every fibre to what its method of identification can tell at best
 * (attributes/method-reach.ts); where no method is given nothing is lowered. The cross-checks enter each in the ledger.
 */
export function lowerByMethod(table: Map<string, Column>, register: Register): void {
  const method = table.get('fibreMethod');
  const [fibres, methods] = [register.vocabularies.get('fibre'), register.vocabularies.get('fibreMethod')];
  if (method?.kind !== 'term' || fibres === undefined || methods === undefined) return;
  for (const id of FIBRES) {
    const column = table.get(id);
    if (column?.kind !== 'term') continue;
    const certainty = column.certainty.map((recorded, row) => {
      const [fibre, way] = [termAt(column, row), termAt(method, row)];
      const found = fibre === null || way === null ? null : reachOf(fibre, way, fibres, methods);
      return found === null ? recorded : Math.max(recorded, CERTAINTIES.indexOf(atBest(found.reach)));
    });
    table.set(id, { ...column, certainty });
  }
}
