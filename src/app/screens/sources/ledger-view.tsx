import { useVirtualizer } from '@tanstack/react-virtual';
import { useMemo, useRef, useState } from 'react';
import type { LedgerEntry } from '../../../sources/source-reading.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { download } from '../../files.ts';
import { Button, Choice, Entry } from '../../parts/controls.tsx';
import { count } from '../../parts/numbers.ts';
import { ScrollRegion } from '../../parts/scroll-region.tsx';
import type { Target } from './target.ts';

const LEVELS: readonly { id: 'all' | LedgerEntry['level']; label: string }[] = [
  { id: 'all', label: 'everything' },
  { id: 'not-understood', label: 'not understood' },
  { id: 'flagged', label: 'look again' },
  { id: 'read', label: 'changed by a rule' },
];

const SAID = { read: 'changed', flagged: 'look again', 'not-understood': 'not understood' } as const;

/** One line for every cell that was not taken as it stands; a line leads to its cell. */
export function LedgerView({ source, onTarget }: { source: SourceView; onTarget: (target: Target) => void }) {
  const [level, setLevel] = useState<string>('all');
  const [column, setColumn] = useState('');
  const [text, setText] = useState('');
  const frame = useRef<HTMLDivElement>(null);
  const columns = useMemo(() => [...new Set(source.ledger.map((entry) => entry.column))], [source]);
  const entries = useMemo(() => {
    const wanted = text.trim().toLowerCase();
    return source.ledger.filter(
      (entry) =>
        (level === 'all' || entry.level === level) &&
        (column === '' || entry.column === column) &&
        (wanted === '' ||
          `${entry.raw} ${entry.readAs} ${entry.why} ${entry.row}`.toLowerCase().includes(wanted)),
    );
  }, [source, level, column, text]);
  const virtual = useVirtualizer({
    count: entries.length,
    getScrollElement: () => frame.current,
    estimateSize: () => 34,
    overscan: 10,
  });
  const place = new Map(source.columns.map((one) => [one.header, one.index]));
  return (
    <div className="stack">
      <div className="ledger-form">
        <Choice label="Show" value={level} options={LEVELS} onChange={setLevel} />
        <Choice
          label="In column"
          value={column === '' ? 'any' : column}
          options={[
            { id: 'any', label: 'any' },
            ...columns.filter((one) => one !== '').map((one) => ({ id: one, label: one })),
          ]}
          onChange={(id) => setColumn(id === 'any' ? '' : id)}
        />
        <Entry
          label="With the words"
          value={text}
          onChange={setText}
          placeholder="raw text, reading or reason"
        />
        <div className="line ledger-count">
          <span className="small">{count(entries.length, 'entry', 'entries')}</span>
          <Button
            look="small"
            onPress={() => download(`${source.name}.ledger.json`, JSON.stringify(entries, null, 1))}
          >
            Save these
          </Button>
        </div>
      </div>
      {entries.length === 0 ? (
        <p className="soft">
          {source.ledger.length === 0
            ? 'Every cell was taken as it stands.'
            : 'Nothing in the ledger fits this.'}
        </p>
      ) : (
        <ScrollRegion name="Ledger entries" className="ledger" ref={frame}>
          <div style={{ height: virtual.getTotalSize(), position: 'relative' }}>
            {virtual.getVirtualItems().map((item) => {
              const entry = entries[item.index];
              if (entry === undefined) return null;
              const at = place.get(entry.column);
              return (
                <div
                  key={item.key}
                  data-index={item.index}
                  ref={virtual.measureElement}
                  className="ledger-line"
                  style={{ transform: `translateY(${item.start}px)` }}
                >
                  <button
                    type="button"
                    className="to-column small"
                    disabled={at === undefined || entry.row === 0}
                    onClick={() => at !== undefined && onTarget({ row: entry.row, column: at })}
                  >
                    {entry.row === 0 ? 'file' : `row ${entry.row}`}
                  </button>
                  <span className="ledger-column">{entry.column === '' ? 'whole row' : entry.column}</span>
                  <span className="quoted">{entry.raw}</span>
                  <span>{entry.readAs === '' ? <span className="soft">no reading</span> : entry.readAs}</span>
                  <span className={`small level ${entry.level}`}>{SAID[entry.level]}</span>
                  <span className="small">{entry.why}</span>
                </div>
              );
            })}
          </div>
        </ScrollRegion>
      )}
    </div>
  );
}
