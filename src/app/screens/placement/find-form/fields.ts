import type { AttributeDefinition } from '../../../../attributes/definition.ts';
import { isWithin } from '../../../../attributes/tree.ts';
import type { StudyView } from '../../../engine/views/study.ts';

/** The blocks of the form with their names, in its order. */
export const BLOCKS = [
  ['structure', 'Structure'],
  ['spacing', 'Spacing and elements'],
  ['fibre', 'Fibre'],
] as const;

export interface Field {
  readonly definition: AttributeDefinition;
  readonly groups: readonly {
    readonly name: string;
    readonly options: readonly { readonly id: string; readonly label: string; readonly note?: string }[];
  }[];
}

/** The attributes that the comparanda record and that make sense for the structure; all where none is named. */
export function fieldsFor(view: StudyView, structure: string | null): Field[] {
  const vocabulary = view.vocabularies.find(({ id }) => id === 'structure');
  const applies = ({ appliesTo }: AttributeDefinition) =>
    appliesTo === undefined ||
    structure === null ||
    vocabulary === undefined ||
    appliesTo.some(
      (ancestor) => isWithin(vocabulary, structure, ancestor) || isWithin(vocabulary, ancestor, structure),
    );
  return view.attributes
    .filter(
      ({ definition, filled, recorded }) =>
        filled > 0 &&
        recorded > 0 &&
        definition.scale !== 'text' &&
        BLOCKS.some(([block]) => block === definition.block) &&
        applies(definition),
    )
    .map(({ definition, levels }) => {
      const own = view.vocabularies.find(({ id }) => id === definition.vocabulary);
      const met = levels.map(({ id, label, count }) => ({ id, label, note: `${count} of the comparanda` }));
      const others = (own?.terms ?? []).filter(({ id }) => !levels.some((level) => level.id === id));
      const groups = [
        { name: 'Among the comparanda', options: met },
        { name: 'Not met so far', options: others.map(({ id, label }) => ({ id, label })) },
      ].filter(({ options }) => options.length > 0);
      return { definition, groups };
    })
    .sort((a, b) => Number(b.definition.id === 'structure') - Number(a.definition.id === 'structure'));
}
