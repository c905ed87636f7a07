import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { AttributeDefinition } from '../../../attributes/definition.ts';
import { isWithin } from '../../../attributes/tree.ts';
import type { TypedReading } from '../../engine/protocol.ts';
import type { StudyView } from '../../engine/views/study.ts';
import { Button, Choice, Entry } from '../../parts/controls.tsx';
import { Picker } from '../../parts/picker.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { FindSchema } from './find-schema.tsx';

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

const BLOCKS = [
  ['structure', 'Structure'],
  ['spacing', 'Spacing and elements'],
  ['fibre', 'Fibre'],
] as const;

/** What is known of the find: only what applies to its structure is asked, any of it may stay blank. */
export function FindForm({ find, of, onDraft, onKeep }: FindFormProps) {
  const { view } = useWorkbench();
  const fields = useMemo(() => (view === null ? [] : fieldsFor(view, find.structure)), [view, find]);
  const put = (id: string, text: string): FindTexts => {
    const rest = Object.fromEntries(Object.entries(find).filter(([key]) => key !== id));
    return text.trim() === '' ? rest : { ...rest, [id]: text };
  };
  const isFirst = ({ definition: { id } }: Field) =>
    of.length === 0 || of.includes(id) || find[id] !== undefined;
  const first = fields.filter(isFirst);
  const more = fields.filter((field) => !isFirst(field));
  const draw = (field: Field) => (
    <FindField
      key={field.definition.id}
      field={field}
      schema={field.definition.id === 'structure' ? <FindSchema find={find} /> : null}
      text={find[field.definition.id] ?? ''}
      onDraft={(text) => onDraft(put(field.definition.id, text))}
      onKeep={(text) =>
        onKeep(put(field.definition.id, text), `${field.definition.label.toLowerCase()} of the find`)
      }
    />
  );
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

interface Field {
  readonly definition: AttributeDefinition;
  readonly groups: readonly {
    readonly name: string;
    readonly options: readonly { readonly id: string; readonly label: string; readonly note?: string }[];
  }[];
}

/** The attributes that the comparanda record and that make sense for the structure. */
function fieldsFor(view: StudyView, structure: string | undefined): Field[] {
  const vocabulary = view.vocabularies.find(({ id }) => id === 'structure');
  const term = vocabulary?.terms.find(({ id, label }) => id === structure || label === structure)?.id;
  const applies = ({ appliesTo }: AttributeDefinition) =>
    appliesTo === undefined ||
    term === undefined ||
    vocabulary === undefined ||
    appliesTo.some(
      (ancestor) => isWithin(vocabulary, term, ancestor) || isWithin(vocabulary, ancestor, term),
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

interface FindFieldProps {
  readonly field: Field;
  /** Shown beneath the field: what its value looks like. */
  readonly schema: ReactNode;
  readonly text: string;
  readonly onDraft: (text: string) => void;
  readonly onKeep: (text: string) => void;
}

function FindField({ field, schema, text, onDraft, onKeep }: FindFieldProps) {
  const { definition, groups } = field;
  const numeric = definition.scale === 'ratio' || definition.scale === 'interval';
  const reading = useTyped(definition.id, text);
  if (numeric)
    return (
      <Entry
        label={definition.label}
        suffix={definition.unit === undefined ? '' : definition.unit}
        value={text}
        onChange={onDraft}
        onDone={() => onKeep(text)}
        placeholder="unknown"
        invalid={reading !== null && !reading.understood}
        {...(reading === null || reading.said === ''
          ? {}
          : {
              reading: `read as ${reading.said}${reading.warnings.length > 0 ? `; ${reading.warnings.join(' ')}` : ''}`,
            })}
      />
    );
  const options = groups.flatMap((group) => group.options);
  const value =
    options.find(({ id, label }) => id === text || label.toLowerCase() === text.toLowerCase())?.id ??
    options.find(({ id }) => text !== '' && id === reading?.term)?.id ??
    null;
  const clear =
    text === '' ? null : (
      <Button look="plain small" label={`${definition.label} is unknown`} onPress={() => onKeep('')}>
        unknown
      </Button>
    );
  return (
    <div className="with-clear">
      {options.length > 8 ? (
        <Picker
          label={definition.label}
          groups={groups}
          value={value}
          onChange={onKeep}
          placeholder="unknown"
        />
      ) : (
        <Choice
          label={definition.label}
          options={options}
          value={value}
          onChange={onKeep}
          placeholder="unknown"
        />
      )}
      {text !== '' &&
      options.every(({ id, label }) => id !== text && label.toLowerCase() !== text.toLowerCase()) ? (
        <span className="small soft">
          “{text}” {reading === null || reading.said === '' ? '' : `read as ${reading.said}`}
        </span>
      ) : null}
      {clear}
      {schema}
    </div>
  );
}

/** How the typed text is read, live. */
function useTyped(attribute: string, text: string): TypedReading | null {
  const { engine, workspace, view } = useWorkbench();
  const [reading, setReading] = useState<TypedReading | null>(null);
  // The view says when the register may have changed
  useEffect(() => {
    if (text.trim() === '') return setReading(null);
    let current = true;
    engine
      .ask((remote) => remote.typed(workspace.study, attribute, text) as Promise<TypedReading>)
      .then(
        (found) => current && setReading(found),
        () => undefined,
      );
    return () => {
      current = false;
    };
  }, [engine, view, attribute, text]);
  return reading;
}
