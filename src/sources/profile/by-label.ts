import type { Register } from '../../attributes/definition.ts';
import { foldText } from '../../attributes/folding.ts';
import type { ColumnRule, SourceProfile } from './profile.ts';

/**
 * A profile may name attributes and terms as they are printed ("Row spacing", "2/2 twill"): here each label becomes its
 * id. What is an id already, and what is neither, stays as it is, so that the checks that follow can say so.
 */
export function withIds(profile: SourceProfile, register: Register): SourceProfile {
  const attributes = labelled(register.attributes.values());
  const attribute = <T extends string | null | undefined>(name: T): T =>
    (typeof name !== 'string' || register.attributes.has(name)
      ? name
      : (attributes.get(foldText(name)) ?? name)) as T;
  const termOf = (id: string | undefined, name: string): string => {
    const definition = register.attributes.get(id ?? '');
    const terms = register.vocabularies.get(definition?.vocabulary ?? '')?.terms ?? [];
    if (terms.some((term) => term.id === name)) return name;
    return labelled(terms).get(foldText(name)) ?? name;
  };
  const column = (rule: ColumnRule): ColumnRule => {
    const id = attribute(rule.attribute);
    return {
      ...rule,
      ...(rule.attribute === undefined ? {} : { attribute: id }),
      ...(rule.terms === undefined
        ? {}
        : { terms: mapValues(rule.terms, (name) => termOf(id ?? undefined, name)) }),
      ...(rule.split === undefined
        ? {}
        : {
            split: {
              ...rule.split,
              into: rule.split.into.map((part) => ({ ...part, attribute: attribute(part.attribute) })),
            },
          }),
    };
  };
  const { counts, ...layout } = profile.layout;
  return {
    ...profile,
    layout:
      counts === undefined
        ? layout
        : {
            ...layout,
            counts: {
              ...counts,
              place: attribute(counts.place),
              ...(counts.attribute === undefined ? {} : { attribute: attribute(counts.attribute) }),
            },
          },
    columns: profile.columns.map(column),
    constants: mapKeys(profile.constants, attribute),
    terms: Object.fromEntries(
      Object.entries(profile.terms).map(([name, translations]) => {
        const id = attribute(name);
        return [id, mapValues(translations, (term) => termOf(id, term))];
      }),
    ),
    ...(profile.joinBy === undefined ? {} : { joinBy: profile.joinBy.map((name) => attribute(name)) }),
  };
}

/** Folded label -> id; a label that two share names neither. */
function labelled(
  things: Iterable<{ readonly id: string; readonly label: string }>,
): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  const shared = new Set<string>();
  for (const { id, label } of things) {
    const key = foldText(label);
    if (found.has(key)) shared.add(key);
    found.set(key, id);
  }
  for (const key of shared) found.delete(key);
  return found;
}

function mapValues(record: Readonly<Record<string, string>>, to: (value: string) => string) {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, to(value)]));
}

function mapKeys(record: Readonly<Record<string, string>>, to: (key: string) => string) {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [to(key), value]));
}
