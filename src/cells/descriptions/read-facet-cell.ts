import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import type { CellContext } from '../context.ts';
import { readCell } from '../read-cell.ts';
import type { Reading } from '../reading.ts';
import { readDescription } from './read-description.ts';

/**
 * Reads a cell of one facet's own column, which may name the whole: "open twining" under "Openness", or say the facet
 * in the words of a description: "Rauten" under "Pattern". What a description says beside the facet is not read here.
 */
export function readFacetCell(
  text: string,
  facet: AttributeDefinition,
  context: CellContext,
  register: Register,
): Reading {
  const own = readCell(text, facet, context);
  const whole = register.attributes.get(facet.facet?.of ?? '');
  const vocabulary = register.vocabularies.get(whole?.vocabulary ?? '');
  if (whole === undefined || vocabulary === undefined) return own;
  if (own.notes.every(({ level }) => level !== 'not-understood')) return own;
  const { decimal } = context;
  const described = readDescription(text, whole, register, { decimal, register, vocabulary });
  const told = described?.rest.length === 0 ? described.facets.get(facet.id) : undefined;
  return told?.kind === own.kind ? told : own;
}
