import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { type Rest, readDescription } from '../../cells/descriptions/read-description.ts';
import type { Reading } from '../../cells/reading.ts';
import type { DescribedView } from './protocol.ts';
import { termLabel } from './record-view.ts';

/** A description in one breath ("open diagonal twining with pile"), parted as a cell of a table would be. */
export function describedView(register: Register, text: string): DescribedView {
  const structure = register.attributes.get('structure');
  const read =
    structure === undefined || text.trim() === ''
      ? null
      : readDescription(text, structure, register, { decimal: '.', register });
  if (structure === undefined || read === null) return { structure: null, facets: [], unused: [] };
  const { main, facets, rest } = read;
  const term = main.kind === 'term' ? main.term : null;
  const left = rest.map((one) => ({ text: one.text, why: one.why, ...mendOf(one, text, register) }));
  const open = main.notes.filter(({ level }) => level === 'not-understood').map(({ why }) => ({ text, why }));
  return {
    structure: term === null ? null : { id: term, label: termLabel(register, structure, term) },
    facets: [...facets].flatMap(([id, reading]) => {
      const facet = register.attributes.get(id);
      return facet === undefined ? [] : [{ id, label: facet.label, ...told(reading, facet, register) }];
    }),
    unused: left.length > 0 ? left : open,
  };
}

function told(
  reading: Reading,
  facet: AttributeDefinition,
  register: Register,
): { readonly value: string; readonly said: string } {
  if (reading.kind === 'numeric' && !Number.isNaN(reading.low))
    return { value: String(reading.low), said: String(reading.low) };
  if (reading.kind === 'term' && reading.term !== null)
    return { value: reading.term, said: termLabel(register, facet, reading.term) };
  const said = reading.state.replace('-', ' ');
  return { value: reading.state === 'absent' ? 'absent' : '?', said };
}

/** The description with the wording that is as a rule meant in the place of the one that is asked about. */
function mendOf({ text, meant }: Rest, whole: string, register: Register): Pick<Mended, 'mend'> {
  const at = meant === undefined ? -1 : whole.indexOf(text);
  if (meant === undefined || at < 0) return {};
  const name = nameOf(meant, register);
  return { mend: { meant: name, text: `${whole.slice(0, at)}${name}${whole.slice(at + text.length)}` } };
}

type Mended = DescribedView['unused'][number];

function nameOf(id: string, register: Register): string {
  const vocabulary = register.vocabularies.get('structure');
  const term = vocabulary?.terms.find((one) => one.id === id);
  const named = vocabulary?.words?.find((one) => one.id === id);
  return term?.label ?? named?.label ?? named?.synonyms.en?.[0] ?? id;
}
