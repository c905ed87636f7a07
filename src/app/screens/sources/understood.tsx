import { useState } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { ColumnReading } from '../../../sources/source-reading.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { download, fileStem } from '../../files.ts';
import { Button, Entry } from '../../parts/controls.tsx';
import { count, percent } from '../../parts/numbers.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { AttributePicker } from './attribute-picker.tsx';
import type { Target } from './target.ts';
import { useProfile } from './use-profile.ts';

export interface UnderstoodProps {
  readonly source: SourceView;
  readonly chosen: number | null;
  readonly onTarget: (target: Target) => void;
}

/** Every column and what it was taken for; each can be changed, and each change undone. */
export function Understood({ source, chosen, onTarget }: UnderstoodProps) {
  return (
    <div className="stack">
      <div className="line apart">
        <h3>{count(source.columns.length, 'column')}</h3>
        <Button
          look="small"
          onPress={() =>
            download(
              `${fileStem(source.name.replace(/\.[^.]+$/, ''))}.profile.json`,
              `${JSON.stringify(source.profile, null, 2)}\n`,
            )
          }
        >
          Save the profile
        </Button>
      </div>
      {source.lost.length === 0 ? null : (
        <p className="notice">
          {source.lost.map((header) => `“${header}”`).join(', ')} would be lost: no attribute and no text
          column takes what stands there. It stays in the ledger.
        </p>
      )}
      <ul className="columns">
        {source.columns.map((column) => (
          <ColumnRow
            key={column.index}
            source={source}
            column={column}
            chosen={chosen === column.index}
            onTarget={onTarget}
          />
        ))}
      </ul>
    </div>
  );
}

interface ColumnRowProps {
  readonly source: SourceView;
  readonly column: ColumnReading;
  readonly chosen: boolean;
  readonly onTarget: (target: Target) => void;
}

function ColumnRow({ source, column, chosen, onTarget }: ColumnRowProps) {
  const { view } = useWorkbench();
  const { column: setRule } = useProfile(source.name);
  const [unit, setUnit] = useState(column.unit ?? '');
  const definitions = column.attributes.map((id) => view?.register.find((attribute) => attribute.id === id));
  const names = definitions.map((definition, i) => definition?.label ?? column.attributes[i]);
  const said = {
    matched: names.join(' + '),
    suggested: 'waits for your answer',
    unknown: 'kept as text',
    ignored: 'left out',
    empty: 'empty',
  }[column.status];
  const numeric = definitions.length === 1 && definitions[0]?.unit !== undefined;
  const clashes = (attribute: string) =>
    source.columns.find((other) => other.index !== column.index && other.attributes.includes(attribute));
  const assign = (attribute: string) => {
    const label = view?.register.find(({ id }) => id === attribute)?.label ?? attribute;
    setRule(
      column.header,
      { attribute, ignore: undefined, split: undefined },
      `“${column.header}” is ${label.toLowerCase()}`,
    );
  };
  const double = column.attributes.map(clashes).find((other) => other !== undefined);
  return (
    <li className={chosen ? 'chosen' : ''}>
      <Disclosure>
        <Heading level={4} className="column-head">
          <AriaButton
            slot="trigger"
            className="column-way"
            onPress={() => onTarget({ row: 0, column: column.index })}
          >
            <span className="column-name">{column.header}</span>
            <span className={`column-sense ${column.status}`}>{said}</span>
            <span className="small soft column-unit">
              {column.unit ?? ''} {percent(source.filledShare[column.index] ?? 0)} filled
            </span>
          </AriaButton>
        </Heading>
        <DisclosurePanel>
          <div className="stack column-form">
            {column.via === undefined || column.via === '' ? null : (
              <p className="small soft">Taken because of: {column.via}</p>
            )}
            {double === undefined ? null : (
              <p className="notice small">
                “{double.header}” feeds the same attribute. Only one reading a cell can be kept.
              </p>
            )}
            <AttributePicker
              label="Holds"
              value={column.attributes.length === 1 ? (column.attributes[0] ?? null) : null}
              onChange={assign}
            />
            {numeric ? (
              <Entry
                label="Unit in the file"
                value={unit}
                placeholder="mm, cm, per cm, per 5 cm, per inch …"
                onChange={setUnit}
                onDone={() => {
                  if (unit.trim() === (column.unit ?? '')) return;
                  setRule(
                    column.header,
                    {
                      attribute: column.attributes[0] ?? null,
                      unit: unit.trim() === '' ? undefined : unit.trim(),
                    },
                    `“${column.header}” is in ${unit.trim()}`,
                  );
                }}
              />
            ) : null}
            <div className="line">
              <Button
                look="small"
                onPress={() =>
                  setRule(
                    column.header,
                    { attribute: null, ignore: undefined, split: undefined },
                    `“${column.header}” stays text`,
                  )
                }
              >
                Keep as text
              </Button>
              {column.status === 'ignored' ? (
                <Button
                  look="small"
                  onPress={() => setRule(column.header, { ignore: undefined }, `take “${column.header}” in`)}
                >
                  Take it in again
                </Button>
              ) : (
                <Button
                  look="small"
                  onPress={() => setRule(column.header, { ignore: true }, `leave “${column.header}” out`)}
                >
                  Leave it out
                </Button>
              )}
            </div>
            {column.status === 'ignored' || column.filled === 0 ? null : (
              <p className="small soft">
                Left out, its {column.filled} filled cells would be lost to every analysis; they would stand
                in the ledger.
              </p>
            )}
          </div>
        </DisclosurePanel>
      </Disclosure>
    </li>
  );
}
