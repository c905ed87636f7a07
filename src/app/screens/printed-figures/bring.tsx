import { useState } from 'react';
import {
  DropZone,
  type FileDropItem,
  FileTrigger,
  Input,
  Label,
  TextArea,
  TextField,
} from 'react-aria-components';
import { claimsTemplate } from '../../../analyses/claims/reading/template.ts';
import { bytesOf, download } from '../../files.ts';
import { Button, Check, Choice } from '../../parts/controls.tsx';
import { FaultNote } from '../../parts/screen.tsx';
import { useDraft } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import { pastedTable } from './pasted-table.ts';
import { PrintedTables, type ReadView } from './printed-tables.tsx';
import type { TableSaid } from './table-said.ts';

export interface BringProps {
  readonly lists: readonly StudyAnalysis[];
  readonly open: StudyAnalysis | null;
  readonly withSources: boolean;
  readonly faults: Readonly<Record<string, string>>;
  readonly read: readonly ReadView[];
  readonly attributes: readonly { readonly id: string; readonly label: string }[];
  readonly onOpen: (id: string) => void;
  readonly onFiles: (files: ReadonlyMap<string, Uint8Array>) => void;
  readonly onNewTable: () => void;
  readonly onEditTable: (file: string) => void;
  readonly onNewList: () => void;
  readonly onOptions: (options: Readonly<Record<string, unknown>>, what: string) => void;
  readonly onRemove: () => void;
}

/** How figures come in: typed, as a claims file, as whole printed tables; and what they are held against. */
export function Bring(props: BringProps) {
  const { lists, open, withSources, attributes, faults, onFiles, onOptions } = props;
  const [refused, setRefused] = useState<string | null>(null);
  const take = async (files: Iterable<File>) => {
    const given = await bytesOf(files);
    const tables = new Map([...given].filter(([name]) => /\.(csv|tsv|txt)$/i.test(name)));
    const others = [...given.keys()].filter((name) => !tables.has(name));
    setRefused(
      others.length === 0
        ? null
        : `${others.join(', ')}: not a CSV; bring claims and printed tables as CSV or TSV.`,
    );
    if (tables.size > 0) onFiles(tables);
  };
  return (
    <div className="stack">
      {lists.length < 2 ? null : (
        <Choice
          label="List"
          value={open?.id ?? null}
          options={lists.map(({ id, title, file }) => ({ id, label: String(title ?? file ?? id) }))}
          onChange={props.onOpen}
        />
      )}
      <DropZone
        className="drop"
        getDropOperation={() => 'copy'}
        onDrop={async (event) => {
          const dropped = event.items.filter((item): item is FileDropItem => item.kind === 'file');
          await take(await Promise.all(dropped.map((item) => item.getFile())));
        }}
      >
        <span className="small claims-drop">
          Drop a claims file or a whole printed table here, as CSV; or type the figures one by one.
        </span>
        <FileTrigger
          acceptedFileTypes={['.csv', '.tsv', '.txt']}
          allowsMultiple
          onSelect={(files) => files !== null && void take(files)}
        >
          <Button look="small" onPress={() => undefined}>
            Open a CSV
          </Button>
        </FileTrigger>
      </DropZone>
      {refused === null ? null : <FaultNote text={refused} />}
      <div>
        <Button look="small" onPress={props.onNewTable}>
          Type a printed table
        </Button>
      </div>
      <PasteTable onTable={(text) => onFiles(pastedTable(text))} />
      <Button look="plain small" onPress={() => download('claims.csv', claimsTemplate(), 'text/csv')}>
        Save a claims file to fill in
      </Button>
      <PrintedTables
        tables={tablesOf(open)}
        faults={faults}
        read={props.read}
        attributes={withSources && open?.data !== false ? attributes : []}
        onEdit={props.onEditTable}
        onChange={(tables, what) => onOptions({ tables }, what)}
      />
      {open === null ? null : (
        <TextField
          className="field"
          value={String(open.paper ?? '')}
          onChange={(paper) => onOptions({ paper }, 'the paper')}
        >
          <Label className="label">Title and source of the paper</Label>
          <Input className="input" />
        </TextField>
      )}
      {withSources && open !== null ? (
        <Check
          value={open.data !== false}
          onChange={(data) => onOptions({ data }, data ? 'against the data' : 'without the data')}
        >
          Recompute them from the open study’s data as well
        </Check>
      ) : null}
      {open === null ? null : (
        <div className="line">
          <Button look="plain small" onPress={props.onNewList}>
            Start another list
          </Button>
          <Button look="plain small" onPress={props.onRemove}>
            Take this list out of the study
          </Button>
        </div>
      )}
    </div>
  );
}

export function tablesOf(open: StudyAnalysis | null): readonly TableSaid[] {
  return (open?.tables as readonly TableSaid[] | undefined) ?? [];
}

/** A table copied out of a page or a spreadsheet. */
function PasteTable({ onTable }: { onTable: (text: string) => void }) {
  const [typed, setText] = useDraft<string>('pasted table');
  const text = typed ?? '';
  return (
    <details className="paste-table">
      <summary className="small">Paste a printed table</summary>
      <div className="stack tight">
        <TextField className="field" value={text} onChange={setText}>
          <Label className="label">As it stands on the page, with its caption and notes</Label>
          <TextArea
            className="input pasted"
            rows={12}
            wrap="off"
            placeholder={'Table 2. Kinds by site\nSite  tabby  twill  Total\nA  12  7  19\nB  3  9  12'}
          />
        </TextField>
        <div>
          <Button
            look="small"
            disabled={text.trim() === ''}
            onPress={() => {
              onTable(text);
              setText(undefined);
            }}
          >
            Take this table
          </Button>
        </div>
      </div>
    </details>
  );
}
