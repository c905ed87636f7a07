import { useState } from 'react';
import { Button as AriaButton, DropZone, type FileDropItem, FileTrigger } from 'react-aria-components';
import { faultText, reporting, Stopped } from '../../engine/client.ts';
import type { PlacedFinds } from '../../engine/protocol.ts';
import { bytesOf } from '../../files.ts';
import { Button } from '../../parts/controls.tsx';
import { count } from '../../parts/numbers.ts';
import { ResultTableView } from '../../parts/result-table.tsx';
import { FaultNote } from '../../parts/screen.tsx';
import { Working } from '../../parts/working.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

export interface ManyFindsProps {
  /** The placement under whose settings the finds are placed. */
  readonly like: StudyAnalysis;
  /** Keeps one of them in the study, to see it whole. */
  readonly onKeep: (title: string, find: Readonly<Record<string, string>>) => void;
}

interface Answer extends PlacedFinds {
  readonly file: string;
}

/** A table of finds, one a row, each placed as one typed in would be; the answers as a table to save. */
export function ManyFinds({ like, onKeep }: ManyFindsProps) {
  const { engine, workspace } = useWorkbench();
  const [answer, setAnswer] = useState<Answer | null>(null);
  const [running, setRunning] = useState<{ share: number; what: string } | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const place = async (files: Iterable<File>) => {
    const given = [...(await bytesOf(files))];
    const file = given.find(([name]) => !name.endsWith('.json'));
    if (file === undefined) return;
    const [name, bytes] = file;
    const profile = given.find(([other]) => other.endsWith('.json'))?.[1];
    setFault(null);
    setRunning({ share: 0, what: `reading ${name}` });
    try {
      const placed = await engine.ask(
        (remote) =>
          remote.placeFinds(
            workspace.study,
            like,
            { name, bytes, ...(profile === undefined ? {} : { profile }) },
            reporting((share, what) => setRunning({ share, what })),
          ) as Promise<PlacedFinds>,
      );
      setAnswer({ ...placed, file: name });
    } catch (error) {
      if (!(error instanceof Stopped)) setFault(faultText(error));
    } finally {
      setRunning(null);
    }
  };
  return (
    <div className="stack">
      <DropZone
        className="drop slim"
        getDropOperation={() => 'copy'}
        onDrop={async (event) => {
          const dropped = event.items.filter((item): item is FileDropItem => item.kind === 'file');
          await place(await Promise.all(dropped.map((item) => item.getFile())));
        }}
      >
        <FileTrigger
          acceptedFileTypes={['.csv', '.tsv', '.txt', '.json']}
          allowsMultiple
          onSelect={(files) => files !== null && void place(files)}
        >
          <AriaButton className="button small">Place a table of finds</AriaButton>
        </FileTrigger>
        <span className="small">
          or drop it here, with its profile if it has one: CSV, one find a row, headed by attributes and units
        </span>
      </DropZone>
      {running === null ? null : <Working {...running} onStop={() => engine.stop()} />}
      {fault === null ? null : <FaultNote text={fault} />}
      {answer === null ? null : (
        <>
          <div className="line apart">
            <span>
              {answer.file}: {count(answer.finds.length, 'find')}. Choose a name to keep it among the finds
              and see it whole.
            </span>
            <Button look="plain small" onPress={() => setAnswer(null)}>
              Put it away
            </Button>
          </div>
          {answer.notes.length === 0 ? null : (
            <ul className="cautions" aria-label="What was not used">
              {answer.notes.map((note) => (
                <li key={note}>{note}</li>
              ))}
            </ul>
          )}
          <ResultTableView
            table={answer.table}
            pickBy="find"
            picked={[]}
            onPick={(name) => {
              const find = answer.finds.find((one) => one.name === name);
              if (find !== undefined) onKeep(find.name, find.given);
            }}
          />
        </>
      )}
    </div>
  );
}
