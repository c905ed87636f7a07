import { readCell } from '../../cells/read-cell.ts';
import type { Prepared } from '../../study/prepare.ts';
import { readable } from '../parts/numbers.ts';
import type { TypedReading } from './protocol.ts';
import { termLabel } from './record-view.ts';

/** How a text typed for an attribute is read: "c. 3.2 cm" -> "28.8 to 35.2 mm, about". */
export function readTyped(prepared: Prepared, attribute: string, text: string): TypedReading {
  const { register } = prepared;
  const definition = register.attributes.get(attribute);
  if (definition === undefined || text.trim() === '') return { said: '', understood: true, warnings: [] };
  const vocabulary = register.vocabularies.get(definition.vocabulary ?? '');
  const reading = readCell(text, definition, {
    register,
    decimal: /\d,\d/.test(text) && !/\d\.\d/.test(text) ? ',' : '.',
    ...(vocabulary === undefined ? {} : { vocabulary }),
  });
  const warnings = reading.notes.filter((note) => note.level !== 'read').map((note) => note.why);
  const unit = definition.unit === undefined ? '' : ` ${definition.unit}`;
  if (reading.kind === 'term') {
    const said =
      reading.term === null ? reading.state.replace('-', ' ') : termLabel(register, definition, reading.term);
    return {
      said,
      ...(reading.term === null ? {} : { term: reading.term }),
      understood: reading.term !== null || warnings.length === 0,
      warnings,
    };
  }
  if (reading.kind === 'text') return { said: reading.text, understood: true, warnings };
  if (Number.isNaN(reading.low))
    return { said: reading.state.replace('-', ' '), understood: warnings.length === 0, warnings };
  const about = reading.state === 'approximate' ? ', about' : '';
  const said =
    reading.low === reading.high
      ? `${readable(reading.low)}${unit}${about}`
      : reading.high === Number.POSITIVE_INFINITY
        ? `${readable(reading.low)}${unit} or more`
        : `${readable(reading.low)} to ${readable(reading.high)}${unit}${about}`;
  return { said, understood: true, warnings };
}
