import { useMemo, useState } from 'react';
import { faultSentence } from '../../../errors.ts';
import type { SourceView } from '../../engine/views/sources.ts';
import { Button } from '../../parts/controls.tsx';
import { count } from '../../parts/numbers.ts';
import { type GridColumn, RawGrid } from '../../parts/raw-grid.tsx';
import { FaultNote, Part } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { cellMarks, gridColumns } from './grid-marks.ts';
import { LayoutForm } from './layout-form.tsx';
import { LedgerView } from './ledger-view.tsx';
import { JoinedNote } from './overflow-question.tsx';
import { Quality } from './quality.tsx';
import { questionsOf } from './question-list.ts';
import { Questions } from './questions.tsx';
import { SourceList } from './source-list.tsx';
import type { Target } from './target.ts';
import { Understood } from './understood.tsx';

export interface SourceDeskProps {
  /** null while the source is being read. */
  readonly source: SourceView | null;
  readonly index: number;
  readonly onChoose: (index: number) => void;
}

/** One source: its raw rows, what was understood, what is asked, and the ledger of every change. */
export function SourceDesk({ source, index, onChoose }: SourceDeskProps) {
  const { workspace, view, go } = useWorkbench();
  const [target, setTarget] = useState<Target | null>(null);
  const labels = useMemo(
    () => new Map((view?.register ?? []).map((attribute) => [attribute.id, attribute])),
    [view?.register],
  );
  const columns = useMemo<readonly GridColumn[]>(
    () => (source === null ? [] : gridColumns(source, (id) => labels.get(id))),
    [source, labels],
  );
  const aside = useMemo(
    () => new Map((source?.rowsSetAside ?? []).map((row) => [row.row, row.reason])),
    [source],
  );
  const marks = useMemo(() => cellMarks(source), [source]);
  const open = source === null ? 0 : questionsOf(source, view?.duplicates ?? []).length;
  return (
    <div className="parts sources">
      <Part name="ask" title="Which table">
        <SourceList
          chosen={index}
          onChoose={(next) => {
            setTarget(null);
            onChoose(next);
          }}
        />
      </Part>
      <Part name="see" title={source === null ? 'The file' : `The file: ${source.name}`}>
        {source === null ? (
          <p>The table is being read.</p>
        ) : source.gridRows === 0 ? (
          <div className="stack">
            <p>
              {source.sheets.length > 1
                ? 'Say which sheet of the workbook is the table.'
                : `This table could not be read.${(view?.sources.length ?? 0) > 1 ? ' The others go on without it.' : ''}`}
            </p>
            {source.sheets.length > 0 || !workspace.files.has(source.name) ? null : (
              <LayoutForm key={source.name} source={source} />
            )}
          </div>
        ) : (
          <div className="stack">
            <Counts source={source} />
            {source.columns.length > 1 ? null : (
              <p className="notice">
                Only one column was found. If there are more, say under “How the file is written” how its
                cells are parted.
              </p>
            )}
            <RawGrid
              source={index}
              rows={source.gridRows}
              headerRow={source.headerRow}
              columns={columns}
              setAside={aside}
              marks={marks}
              target={target}
              onColumn={(column) => setTarget({ row: 0, column })}
              version={source}
            />
            <GridKey />
            <LayoutForm key={source.name} source={source} />
          </div>
        )}
      </Part>
      <Part name="trace" title="What was understood">
        {source === null ? null : (
          <div className="stack wide">
            {faultsBeside(source).map((fault) => (
              <FaultNote key={faultSentence(fault)} text={faultSentence(fault)} />
            ))}
            <JoinedNote source={source} onTarget={setTarget} />
            {open === 0 && source.gridRows === 0 ? null : open === 0 && source.rowsKept === 0 ? (
              <p className="sentence">No row of this table is a find, so there is nothing to compare.</p>
            ) : open === 0 ? (
              <div className="stack tight">
                <p className="sentence">Nothing is left to ask about this table.</p>
                <div>
                  <Button look="main" onPress={() => go('kinship')}>
                    See how the finds are related
                  </Button>
                </div>
              </div>
            ) : (
              <Questions key={source.name} source={source} onTarget={setTarget} />
            )}
            {source.gridRows === 0 ? null : (
              <Understood source={source} onTarget={setTarget} chosen={target?.column ?? null} />
            )}
          </div>
        )}
      </Part>
      {source === null || source.gridRows === 0 ? null : (
        <Part name="more" title="To look at again, and the ledger">
          <div className="stack wide">
            <Quality key={source.name} source={source} onTarget={setTarget} />
            <div>
              <h3>Ledger: every cell that was changed, flagged or not understood</h3>
              <LedgerView key={source.name} source={source} onTarget={setTarget} />
            </div>
          </div>
        </Part>
      )}
    </div>
  );
}

function Counts({ source }: { source: SourceView }) {
  const aside = source.rowsSetAside.length;
  return (
    <p>
      {count(source.rowsRead, 'row')} read = <strong>{source.rowsKept} kept</strong> + {aside} set aside
      {source.transposed ? ', turned on its side: the file has one row an attribute' : ''}.
    </p>
  );
}

function GridKey() {
  return (
    <ul className="grid-key small soft">
      <li>
        <span className="raw-cell read">12,5</span> changed by a rule
      </li>
      <li>
        <span className="raw-cell flagged">900</span> read, but look again
      </li>
      <li>
        <span className="raw-cell not-understood">??</span> not understood, kept as text
      </li>
      <li>
        <span className="raw-row aside swatch">row</span> set aside
      </li>
      <li>the hanging thread beside a heading shows how much of the column is filled</li>
    </ul>
  );
}

/** Faults that no question asks about: of a workbook which sheet it is, of rows that are too long how they are read. */
function faultsBeside(source: SourceView) {
  if (source.sheets.length > 1 && source.gridRows === 0) return [];
  const asked = new Set(source.tooLong?.rows);
  return source.faults.filter(({ where }) => where.row === undefined || !asked.has(where.row));
}
