import { useEffect, useRef, useState } from 'react';
import type { ClaimRow } from '../../../analyses/claims/reading/claim.ts';
import {
  METHODS,
  QUANTITIES,
  QUANTITY_NAMES,
  type Quantity,
} from '../../../analyses/claims/reading/terms.ts';
import { Button, Choice, Entry } from '../../parts/controls.tsx';
import type { Draft } from './claims-list.ts';

export interface ClaimFormProps {
  readonly draft: Draft;
  /** What the worker says of the row; the column names the field that it is about. */
  readonly fault: { readonly column: string; readonly text: string } | null;
  /** A row that was just added takes the keyboard. */
  readonly fresh: boolean;
  readonly attributes: readonly { readonly id: string; readonly label: string }[];
  readonly onChange: (change: Partial<Draft>) => void;
  readonly onNext: () => void;
  readonly onRemove: () => void;
}

type Column = keyof ClaimRow;

/** Column -> its name on screen, and how it is filled in. */
const FIELDS: readonly (readonly [column: Column, label: string, hint: string])[] = [
  ['set', 'Set', 'a word shared by figures of one sample, one test or one table'],
  ['step', 'Step of the readings', '1 for whole numbers, 0.5 for halves, 0.1 for tenths'],
  ['attribute', 'Of what', 'such as rowSpacing; of two, parted by ";"'],
  ['select', 'Of which records', 'such as site in Quorrimel Cave; rowSpacing >= 2'],
  ['versus', 'Against which', 'the other group, in the same form'],
  ['counted', 'Counting which', 'such as fibre within treeBast'],
  ['note', 'Note', ''],
];

/** Fields that only some quantities have. */
const ONLY: Readonly<Partial<Record<Column, readonly Quantity[]>>> = {
  step: ['mean', 'sd', 'se', 'cv', 'median', 'min', 'max', 'range', 'q1', 'q3', 'total', 'difference'],
  versus: [
    'difference',
    'ratio',
    'statistic',
    'df',
    'p',
    'n',
    'effect',
    'low',
    'high',
    'interval',
    'similarity',
    'correlation',
  ],
  counted: ['count', 'share', 'low', 'high', 'interval', 'total', 'statistic', 'p'],
  test: ['statistic', 'df', 'p', 'correlation', 'effect', 'similarity', 'diversity'],
  sided: ['statistic', 'p'],
};

/** One printed figure as a form; only what its quantity can use is asked. */
export function ClaimForm(props: ClaimFormProps) {
  const { draft, fault, fresh, attributes, onChange, onNext, onRemove } = props;
  const frame = useRef<HTMLFieldSetElement>(null);
  useEffect(() => {
    if (fresh) frame.current?.querySelector('input')?.focus();
  }, [fresh]);
  const asks = (column: Column) => {
    const only = ONLY[column];
    return draft[column] !== '' || only === undefined || only.includes(draft.quantity as Quantity);
  };
  const line = (column: Column, label: string, hint: string) => (
    <Line
      key={column}
      label={label}
      column={column}
      hint={hint}
      value={draft[column]}
      fault={fault?.column === column ? fault.text : null}
      options={column === 'attribute' ? attributes : []}
      onDone={(text) => onChange({ [column]: text })}
    />
  );
  const said = QUANTITIES[draft.quantity as Quantity];
  return (
    <fieldset className="claim-form stack" ref={frame}>
      <legend>Figure {draft.id}</legend>
      <div className="claim-pair">
        {line('printed', 'As it is printed', '12.3 · p < .05 · 34 % · 3.5±0.4')}
        <div className="stack tight">
          <Choice
            label="What it is"
            options={QUANTITY_NAMES.map((id) => ({ id, label: id, note: QUANTITIES[id] }))}
            value={draft.quantity === '' ? null : draft.quantity}
            onChange={(quantity) => onChange({ quantity })}
          />
          {said === undefined ? null : <span className="small soft">{said}</span>}
        </div>
        {line('place', 'Where it stands', 'page, table, sentence')}
        {asks('test') ? (
          <Choice
            label="Test, coefficient or index"
            options={[{ id: '', label: 'not said' }, ...METHODS.map((id) => ({ id, label: id }))]}
            value={draft.test}
            onChange={(test) => onChange({ test })}
          />
        ) : null}
        {asks('sided') ? (
          <Choice
            label="Sides of p"
            options={[
              { id: '', label: 'not said: two' },
              { id: 'one', label: 'one' },
              { id: 'two', label: 'two' },
            ]}
            value={draft.sided}
            onChange={(sided) => onChange({ sided })}
          />
        ) : null}
        {FIELDS.filter(([column]) => asks(column)).map(([column, label, hint]) => line(column, label, hint))}
      </div>
      {fault === null || draft.printed === '' || draft.quantity === '' ? null : (
        <p className="small" role="status">
          Not read yet: {fault.text}
        </p>
      )}
      <div className="line apart">
        <Button onPress={onNext}>Next figure</Button>
        <Button look="plain small" label={`Remove this figure: ${draft.id}`} onPress={onRemove}>
          Remove this figure
        </Button>
      </div>
    </fieldset>
  );
}

interface LineProps {
  readonly label: string;
  readonly column: string;
  readonly hint: string;
  readonly value: string;
  readonly fault: string | null;
  readonly options: readonly { readonly id: string; readonly label: string }[];
  readonly onDone: (text: string) => void;
}

/** Text that is taken when the reader is done with it, so that half a figure is no change. */
function Line({ label, column, hint, value, fault, options, onDone }: LineProps) {
  const [text, setText] = useState(value);
  useEffect(() => setText(value), [value]);
  return (
    <Entry
      label={label}
      value={text}
      invalid={fault !== null}
      onChange={setText}
      onDone={() => text !== value && onDone(text.trim())}
      {...(hint === '' ? {} : { placeholder: hint })}
      {...(options.length === 0 ? {} : { proposals: { id: `claim-${column}`, options } })}
    />
  );
}
