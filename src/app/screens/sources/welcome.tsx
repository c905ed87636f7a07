import { useState } from 'react';
import { Button as AriaButton, DropZone, type FileDropItem, FileTrigger } from 'react-aria-components';
import { faultText } from '../../engine/client.ts';
import { openDemo } from '../../openings.ts';
import { Button } from '../../parts/controls.tsx';
import { FaultNote, ScreenFrame } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { useOpenFiles } from './use-open-files.ts';

/** The first page: bring tables, or try the demo. */
export function Welcome() {
  const { change } = useWorkbench();
  const { open, fault } = useOpenFiles();
  const [trouble, setTrouble] = useState<string | null>(null);
  const demo = () =>
    openDemo().then(
      (workspace) => change(() => workspace, 'open the demo'),
      (error: unknown) => setTrouble(faultText(error)),
    );
  return (
    <ScreenFrame question="Where does this fabric belong?">
      <div className="welcome">
        <div className="stack wide">
          <p className="sentence">
            Thrum sets a find, or a whole site, among its comparanda: which it is like, in what, and how sure
            that is. Bring your catalogue and those of colleagues, each in its own layout, units and language.
          </p>
          <FileDrop onFiles={open} big />
          {fault === null ? null : <FaultNote text={fault} />}
          {trouble === null ? null : <FaultNote text={trouble} />}
          <div className="line">
            <Button onPress={demo}>Open the demo study</Button>
            <span className="soft small">Five catalogues of an invented coast, in five untidy layouts.</span>
          </div>
        </div>
        <aside className="stack">
          <h2>What happens to your data</h2>
          <p>
            Everything is computed on this machine. No file, no figure and no name is sent anywhere; what you
            open is kept in this browser until you forget it, and a study is saved when you take it away.
          </p>
          <h2>Before you measure</h2>
          <p>
            Charred, mineralised, dried and waterlogged fabrics can be destroyed by touch, unfolding or
            drying. Support the find, photograph first, count from images where you can, and ask a conservator
            and the responsible authority before you sample. Thrum gives no permission to do any of it.
          </p>
        </aside>
      </div>
    </ScreenFrame>
  );
}

/** A place to drop files, which is a button as well. */
export function FileDrop({ onFiles, big }: { onFiles: (files: Iterable<File>) => void; big?: boolean }) {
  return (
    <DropZone
      className={`drop ${big ? 'big' : ''}`}
      getDropOperation={() => 'copy'}
      onDrop={async (event) => {
        const dropped = event.items.filter((item): item is FileDropItem => item.kind === 'file');
        onFiles(await Promise.all(dropped.map((item) => item.getFile())));
      }}
    >
      <svg className="drop-fringe" aria-hidden="true">
        <defs>
          <pattern id="drop-threads" width="132" height="22" patternUnits="userSpaceOnUse">
            <path
              d="M6 2V13M18 2V18M30 2V10M42 2V16M54 2V21M66 2V12M78 2V17M90 2V9M102 2V19M114 2V14M126 2V11"
              stroke="var(--neutral)"
              strokeWidth="2"
            />
          </pattern>
        </defs>
        <rect width="100%" height="22" fill="url(#drop-threads)" />
        <rect width="100%" height="3" fill="var(--ink)" />
      </svg>
      <FileTrigger
        acceptedFileTypes={['.csv', '.tsv', '.txt', '.json']}
        allowsMultiple
        onSelect={(files) => files !== null && onFiles(files)}
      >
        <AriaButton className={`button ${big ? 'main' : ''}`}>
          {big ? 'Choose tables' : 'Add tables'}
        </AriaButton>
      </FileTrigger>
      <span className="small">
        or drop them here: CSV or TSV, with their profiles
        {big ? ', or a whole study with its study.json' : ''}
      </span>
    </DropZone>
  );
}
