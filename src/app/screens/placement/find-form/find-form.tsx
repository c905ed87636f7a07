import { type ReactNode, useMemo } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import { Button } from '../../../parts/controls.tsx';
import { useWorkbench } from '../../../state/workbench.tsx';
import { AsWritten } from './as-written.tsx';
import { BLOCKS, type Field, fieldsFor } from './fields.ts';
import { FindField } from './find-field.tsx';
import { FindSchema } from './find-schema.tsx';
import { useDescribed } from './use-asked.ts';

export type FindTexts = Readonly<Record<string, string>>;

export interface FindFormProps {
  readonly find: FindTexts;
  /** Attributes that the comparison rests on; empty = all that are recorded. */
  readonly of: readonly string[];
  /** Called with every key stroke. */
  readonly onDraft: (find: FindTexts) => void;
  /** Called when an entry is finished, to keep it. */
  readonly onKeep: (find: FindTexts, what: string) => void;
}

/** What is known of the find: only what applies to its structure is asked, any of it may stay blank. */
export function FindForm({ find, of, onDraft, onKeep }: FindFormProps) {
  const { view } = useWorkbench();
  const written = find.structure ?? '';
  const described = useDescribed(written);
  const structure = written.trim() === '' ? null : (described?.structure ?? null);
  const fields = useMemo(
    () => (view === null ? [] : fieldsFor(view, structure?.id ?? null)),
    [view, structure?.id],
  );
  const told = new Map(
    written.trim() === '' ? [] : (described?.facets ?? []).map((facet) => [facet.id, facet] as const),
  );
  const put = (id: string, text: string): FindTexts => {
    const rest = Object.fromEntries(Object.entries(find).filter(([key]) => key !== id));
    return text.trim() === '' ? rest : { ...rest, [id]: text };
  };
  /** Another structure instead of the one that was written; what else the description said stays said. */
  const putStructure = (id: string): FindTexts => {
    const still = new Set(view === null ? [] : fieldsFor(view, id).map(({ definition }) => definition.id));
    const said = [...told.values()].filter((facet) => still.has(facet.id));
    return {
      ...Object.fromEntries(said.map(({ id: facet, value }) => [facet, value])),
      ...put('structure', id),
    };
  };
  const isFirst = ({ definition: { id } }: Field) =>
    of.length === 0 || of.includes(id) || find[id] !== undefined || told.has(id);
  const first = fields.filter(isFirst);
  const more = fields.filter((field) => !isFirst(field));
  const draw = (field: Field) => {
    const { id, label } = field.definition;
    const what = `${label.toLowerCase()} of the find`;
    if (id !== 'structure')
      return (
        <FindField
          key={id}
          field={field}
          text={find[id] ?? ''}
          told={told.get(id) ?? null}
          onDraft={(text) => onDraft(put(id, text))}
          onKeep={(text) => onKeep(put(id, text), what)}
        />
      );
    const term = field.groups.flatMap(({ options }) => options).find((option) => option.id === written);
    return (
      <div key={id} className="stack tight">
        <AsWritten
          text={term?.label ?? written}
          described={described}
          onDraft={(text) => onDraft(put(id, text))}
          onKeep={(text) => text !== term?.label && onKeep(put(id, text), what)}
        />
        <FindField
          field={field}
          text={structure?.id ?? ''}
          told={null}
          onDraft={(text) => onDraft(putStructure(text))}
          onKeep={(text) => onKeep(text === '' ? put(id, '') : putStructure(text), what)}
        />
        <FindSchema find={find} />
      </div>
    );
  };
  const known = new Set(fields.map(({ definition }) => definition.id));
  const stray = Object.keys(find).filter((id) => !known.has(id));
  return (
    <div className="stack wide">
      <Blocks fields={first} draw={draw} />
      {more.length === 0 ? null : (
        <Disclosure>
          <Heading level={3} className="plain-head">
            <AriaButton slot="trigger" className="button plain small">
              {more.length} further {more.length === 1 ? 'measurement' : 'measurements'}, not compared but
              ranked
            </AriaButton>
          </Heading>
          <DisclosurePanel>
            <Blocks fields={more} draw={draw} />
          </DisclosurePanel>
        </Disclosure>
      )}
      {stray.length === 0 ? null : (
        <div className="notice stack tight">
          {stray.map((id) => {
            const label = view?.register.find((attribute) => attribute.id === id)?.label ?? id;
            return (
              <p key={id} className="small">
                {label} “{find[id]}” does not apply to this structure.{' '}
                <Button
                  look="plain small"
                  onPress={() => onKeep(put(id, ''), `take ${label.toLowerCase()} out`)}
                >
                  Take it out
                </Button>
              </p>
            );
          })}
        </div>
      )}
    </div>
  );
}

function Blocks({ fields, draw }: { fields: readonly Field[]; draw: (field: Field) => ReactNode }) {
  return (
    <div className="stack">
      {BLOCKS.map(([block, name]) => {
        const own = fields.filter(({ definition }) => definition.block === block);
        if (own.length === 0) return null;
        return (
          <fieldset key={block} className="stack find-block">
            <legend>
              <span className="swatch" style={{ background: `var(--${block})` }} />
              {name}
            </legend>
            {own.map(draw)}
          </fieldset>
        );
      })}
    </div>
  );
}
