import { viewItems } from '../fragments/items/items.ts';
import type { FragmentTable } from '../fragments/table.ts';
import type { Material } from './prepare.ts';

/** The same material with its fragments called otherwise; the objects follow where they are what counts. */
export function withFragments(prepared: Material, fragments: FragmentTable): Material {
  const records = prepared.unit === 'item' ? viewItems(fragments, prepared.register) : fragments;
  return { ...prepared, fragments, records };
}
