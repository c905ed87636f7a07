import { useState } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';
import type { Delimiter, Encoding } from '../../../sources/source-reading.ts';
import { sourceName } from '../../../study/source-name.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Choice, Entry } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withFurtherSheet, withSheet } from '../../state/workspace-sources.ts';
import { useProfile } from './use-profile.ts';

const ENCODINGS: readonly { id: Encoding; label: string }[] = [
  { id: 'utf-8', label: 'UTF-8' },
  { id: 'utf-16le', label: 'UTF-16, little end first' },
  { id: 'utf-16be', label: 'UTF-16, big end first' },
  { id: 'windows-1252', label: 'Windows-1252 (western European)' },
];

const DELIMITERS: readonly { id: Delimiter; label: string }[] = [
  { id: ',', label: 'comma' },
  { id: ';', label: 'semicolon' },
  { id: '\t', label: 'tab' },
  { id: '|', label: 'upright bar' },
];

/** How the file is written; detected, shown, and open to correction. */
export function LayoutForm({ source }: { source: SourceView }) {
  const { edit } = useProfile(source.name);
  const { encoding, delimiter, decimal } = source.dialect;
  const [header, setHeader] = useState(String(source.headerRow));
  const said = [
    ENCODINGS.find(({ id }) => id === encoding)?.label ?? encoding,
    `cells parted by ${DELIMITERS.find(({ id }) => id === delimiter)?.label ?? delimiter}`,
    `decimal ${decimal === ',' ? 'comma' : 'point'}`,
    source.headerRow === 0 ? 'no headings' : `headings in row ${source.headerRow}`,
  ].join(', ');
  return (
    <Disclosure>
      <Heading level={3} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          How the file is written: {said}
        </AriaButton>
      </Heading>
      <DisclosurePanel>
        <div className="layout-form">
          {source.sheets.length < 2 ? null : <SheetForm source={source} />}
          <Choice
            label="Letters are encoded as"
            value={encoding}
            options={ENCODINGS}
            onChange={(id) => edit((profile) => ({ ...profile, encoding: id as Encoding }), `read as ${id}`)}
          />
          <Choice
            label="Cells are parted by"
            value={delimiter}
            options={DELIMITERS}
            onChange={(id) =>
              edit(
                (profile) => ({ ...profile, delimiter: id as Delimiter }),
                'part the cells by another sign',
              )
            }
          />
          <Choice
            label="Decimal mark"
            value={decimal}
            options={[
              { id: ',', label: 'comma: 3,5' },
              { id: '.', label: 'point: 3.5' },
            ]}
            onChange={(id) =>
              edit((profile) => ({ ...profile, decimal: id === ',' ? ',' : '.' }), 'another decimal mark')
            }
          />
          <Entry
            label="Headings in row"
            value={header}
            onChange={setHeader}
            onDone={() => {
              const row = Number(header);
              if (!Number.isInteger(row) || row < 0 || row === source.headerRow)
                return setHeader(String(source.headerRow));
              edit(
                (profile) => ({ ...profile, layout: { ...profile.layout, headerRow: row } }),
                row === 0 ? 'no headings' : `headings in row ${row}`,
              );
            }}
          />
        </div>
      </DisclosurePanel>
    </Disclosure>
  );
}

/** Another sheet in the place of this one, or beside it. */
function SheetForm({ source }: { source: SourceView }) {
  const { workspace, change } = useWorkbench();
  const own = workspace.study.sources.find((one) => sourceName(one) === source.name);
  if (own === undefined) return null;
  const taken = workspace.study.sources.filter(({ file }) => file === own.file).map(({ sheet }) => sheet);
  const free = source.sheets.filter((sheet) => !taken.includes(sheet));
  if (free.length === 0) return null;
  const options = free.map((sheet) => ({ id: sheet, label: sheet }));
  return (
    <>
      <Choice
        label="Read another sheet instead"
        placeholder={own.sheet ?? 'choose'}
        value={null}
        options={options}
        onChange={(sheet) => change((now) => withSheet(now, source.name, sheet), `read the sheet ${sheet}`)}
      />
      <Choice
        label="Add another sheet as a table"
        value={null}
        options={options}
        onChange={(sheet) =>
          change((now) => withFurtherSheet(now, own.file, sheet), `add the sheet ${sheet}`)
        }
      />
    </>
  );
}
