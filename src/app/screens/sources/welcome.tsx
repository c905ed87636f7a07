import { useState } from 'react';
import { Button as AriaButton, DropZone, type FileDropItem, FileTrigger } from 'react-aria-components';
import { faultText } from '../../engine/client.ts';
import { type DemoStudy, openDemo } from '../../openings.ts';
import { Button } from '../../parts/controls.tsx';
import { FaultNote, ScreenFrame } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { useOpenFiles } from './use-open-files.ts';

/** The first page: bring tables, or try the demo. */
export function Welcome() {
  const { change, go } = useWorkbench();
  const { open, fault } = useOpenFiles();
  const [trouble, setTrouble] = useState<string | null>(null);
  const demo = (which: DemoStudy) =>
    openDemo(which).then(
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
            <Button onPress={() => demo('study.json')}>Open the demo study</Button>
            <span className="soft small">Five catalogues of an invented coast, in five untidy layouts.</span>
          </div>
          <div className="line">
            <Button onPress={() => demo('hard-cases-study.json')}>Open the hard cases</Button>
            <span className="soft small">
              Seventeen invented pieces: hidden warps, touching rows, repairs, one withheld.
            </span>
          </div>
          <div className="line">
            <Button onPress={() => go('printed-figures')}>Check printed figures</Button>
            <span className="soft small">
              A paper in hand and no data? Its means, counts and tests can be held against each other.
            </span>
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
          <pattern id="drop-threads" width="216" height="26" patternUnits="userSpaceOnUse">
            <path
              d="M4 2c0 6.0 -0.6 7.5 -0.4 15M9 2c0 8.0 0.6 10.0 0.4 20M15 2c0 4.8 -2 6.0 -1.2 12M20 2c0 8.0 1.2 10.0 0.7 20M27 2c0 3.6 -1.2 4.5 -0.7 9M34 2c0 6.8 -1.2 8.5 -0.7 17M39 2c0 6.8 -1.2 8.5 -0.7 17M44 2c0 6.8 -0.6 8.5 -0.4 17M50 2c0 5.6 -0.6 7.0 -0.4 14M57 2c0 7.2 -2 9.0 -1.2 18M64 2c0 8.0 1.2 10.0 0.7 20M70 2c0 5.6 -1.2 7.0 -0.7 14M76 2c0 6.8 -2 8.5 -1.2 17M83 2c0 3.6 -0.6 4.5 -0.4 9M90 2c0 6.0 0.6 7.5 0.4 15M96 2c0 6.8 0.6 8.5 0.4 17M102 2c0 5.6 -1.2 7.0 -0.7 14M109 2c0 6.8 -2 8.5 -1.2 17M114 2c0 3.6 0.6 4.5 0.4 9M121 2c0 8.8 2 11.0 1.2 22M128 2c0 5.6 2 7.0 1.2 14M134 2c0 4.8 0.6 6.0 0.4 12M140 2c0 8.8 -0.6 11.0 -0.4 22M146 2c0 7.2 0.6 9.0 0.4 18M153 2c0 6.0 -0.6 7.5 -0.4 15M158 2c0 3.6 2 4.5 1.2 9M164 2c0 6.8 1.2 8.5 0.7 17M170 2c0 4.8 -0.6 6.0 -0.4 12M176 2c0 6.8 0.6 8.5 0.4 17M181 2c0 3.6 -0.6 4.5 -0.4 9M186 2c0 6.8 2 8.5 1.2 17M193 2c0 3.6 -0.6 4.5 -0.4 9M200 2c0 7.2 -1.2 9.0 -0.7 18M206 2c0 4.8 -0.6 6.0 -0.4 12M212 2c0 8.8 -0.6 11.0 -0.4 22"
              fill="none"
              stroke="var(--ink-soft)"
              strokeWidth="1.4"
              strokeLinecap="round"
            />
          </pattern>
        </defs>
        <rect width="100%" height="26" fill="url(#drop-threads)" />
        <rect width="100%" height="3" fill="var(--ink)" />
      </svg>
      <FileTrigger
        acceptedFileTypes={['.csv', '.tsv', '.txt', '.xlsx', '.parquet', '.json']}
        allowsMultiple
        onSelect={(files) => files !== null && onFiles(files)}
      >
        <AriaButton className={`button ${big ? 'main' : ''}`}>
          {big ? 'Choose tables' : 'Add tables'}
        </AriaButton>
      </FileTrigger>
      <span className="small">
        or drop them here: CSV, TSV or XLSX, with their profiles
        {big ? ', or a whole study with its study.json' : ''}
      </span>
    </DropZone>
  );
}
