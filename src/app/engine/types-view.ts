import { assignTypes } from '../../analyses/typology/assign.ts';
import { NO_TYPE } from '../../analyses/typology/found.ts';
import { parseTypology } from '../../analyses/typology/parse.ts';
import { describeRule, ruleAnswer } from '../../analyses/typology/rules.ts';
import { cutsOf } from '../../analyses/typology/split.ts';
import { InputError } from '../../errors.ts';
import { greatest, least } from '../../numerics/foundation/lists.ts';
import type { Prepared } from '../../study/prepare.ts';
import type { TypesView } from './views/types.ts';

/** What rules answer for the records, before anything is tested; a fault comes as its sentence. */
export function typesView({ records, register }: Prepared, text: string, file: string): TypesView {
  try {
    const typology = parseTypology(text, file);
    const { rows, type, overlaps } = assignTypes(records, typology, register, file);
    const count = (place: number) => type.filter((own) => own === place).length;
    const types = typology.types.map(({ id, label, when }, place) => {
      const answer = ruleAnswer(when, records, register);
      const answers = Array.from(rows, (row) => answer(row).answer);
      const of = (wanted: string) => answers.filter((given) => given === wanted).length;
      return {
        id,
        label,
        rule: describeRule(when, register),
        fits: of('in'),
        out: of('out'),
        cannotSay: of('cannot say'),
        taken: count(place),
      };
    });
    return {
      fault: null,
      records: rows.length,
      types,
      none: count(NO_TYPE.none),
      several: count(NO_TYPE.several),
      undecided: count(NO_TYPE.undecided),
      overlaps: overlaps.map(({ first, second, records: both }) => ({
        first: typology.types[first]?.label ?? '',
        second: typology.types[second]?.label ?? '',
        records: both,
      })),
      cuts: [...cutsOf(typology)].flatMap(([attribute, cuts]) => {
        const column = records.columns.get(attribute);
        if (column?.kind !== 'numeric') return [];
        const ends = Array.from(rows).flatMap((row) =>
          [column.low[row] ?? Number.NaN, column.high[row] ?? Number.NaN].filter(Number.isFinite),
        );
        if (ends.length === 0) return [];
        const { label, unit } = column.attribute;
        return [{ attribute, label, unit: unit ?? '', cuts, least: least(ends), most: greatest(ends) }];
      }),
    };
  } catch (fault) {
    if (!(fault instanceof InputError)) throw fault;
    const none = { records: 0, types: [], none: 0, several: 0, undecided: 0, overlaps: [], cuts: [] };
    return { fault: fault.message, ...none };
  }
}
