import { useState } from 'react';
import type { ClaimsView } from '../../engine/views/claims.ts';
import { fileStem } from '../../files.ts';
import { Button } from '../../parts/controls.tsx';
import { FaultNote, Part, Said, ScreenFrame } from '../../parts/screen.tsx';
import { Tables } from '../../parts/tables.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Screen } from '../screen.ts';
import { Bring, tablesOf } from './bring.tsx';
import { ClaimForm } from './claim-form.tsx';
import { FigureList, listLines } from './figure-list.tsx';
import { SaveClaims } from './save.tsx';
import { TableForm } from './table-form.tsx';
import { useClaims, withoutBlankTables } from './use-claims.ts';
import { useClaimsDesk } from './use-list.ts';
import { VerdictWorking } from './verdict-working.tsx';

const QUESTION = 'Which printed figures agree, and which cannot be?';
const LEAD =
  'Type what a paper prints, or drop it as a file. Figures are held against each other, and against data where they are open. Printing slips, other rounding or other records can explain a difference.';

function PrintedFiguresScreen() {
  const { workspace, view } = useWorkbench();
  const desk = useClaimsDesk();
  const { open, drafts } = desk;
  const { answer, fault, busy } = useClaims(withoutBlankTables(open, desk.gridOf));
  const [chosen, setChosen] = useState<string | null>(null);
  const [fresh, setFresh] = useState<number | string | null>(null);
  const [tableOpen, setTableOpen] = useState<string | null>(null);
  const lines = open === null ? [] : listLines(drafts, answer);
  const tables = tablesOf(open).map(({ file }) => file);
  const table = tableOpen !== null && tables.includes(tableOpen) ? tableOpen : null;
  // A table that cannot be read yet has no line of its own, and stays open all the same.
  const line = lines.find(({ key }) => key === chosen) ?? (table === null ? lines[0] : null) ?? null;
  const draft = line?.draft ?? null;
  const stem = fileStem(String(open?.title ?? open?.file ?? workspace.study.title).replace(/\.[^.]+$/, ''));
  const attributes = (view?.attributes ?? [])
    .filter(({ definition }) => definition.scale !== 'text')
    .map(({ definition }) => ({ id: definition.id, label: definition.label }));
  const add = (after: number | null) => {
    const place = desk.addDraft(after);
    setFresh(place);
    setTableOpen(null);
    setChosen(`${place}:0`);
  };
  const choose = (key: string) => {
    setFresh(null);
    setTableOpen(lines.find((one) => one.key === key)?.table ?? null);
    setChosen(key);
  };
  const editTable = (file: string, isNew: boolean) => {
    setFresh(isNew ? file : null);
    setTableOpen(file);
    setChosen(lines.find((one) => one.table === file)?.key ?? '');
  };
  const faults = Object.fromEntries(
    (answer?.printed ?? []).flatMap(({ file, fault: why }) => (why === null ? [] : [[file, why]])),
  );
  const openFigure = (id: string) => {
    const found = lines.find((one) => one.judged?.id === id);
    if (found !== undefined) choose(found.key);
  };
  return (
    <ScreenFrame question={QUESTION} lead={LEAD}>
      <div className="parts printed-figures">
        <Part name="ask" title="The figures of a paper">
          <Bring
            lists={desk.lists}
            open={open}
            withSources={workspace.study.sources.length > 0}
            attributes={attributes}
            faults={faults}
            read={answer?.printed ?? []}
            onNewTable={() => editTable(desk.newTable(), true)}
            onEditTable={(file) => editTable(file, false)}
            onOpen={desk.openList}
            onFiles={desk.takeFiles}
            onNewList={desk.newList}
            onOptions={desk.setOptions}
            onRemove={desk.removeList}
          />
        </Part>
        <Part name="say" title="What can be said">
          {answer === null || answer.words === null ? (
            <p className="soft">
              {busy ? 'The figures are being checked.' : 'The verdict comes with the first figure.'}
            </p>
          ) : (
            <div className="stack">
              <Said words={answer.words} />
              {open === null ? null : <SaveClaims list={open} stem={stem} />}
            </div>
          )}
          {fault === null ? null : <FaultNote text={fault} />}
          {answer?.fault == null ? null : <FaultNote text={answer.fault} />}
        </Part>
        <Part name="see" title="The figures and their verdicts">
          <div className="stack">
            {lines.length === 0 ? (
              <p className="soft">No figure is here yet. Type the first one, or bring a file.</p>
            ) : (
              <FigureList
                lines={lines}
                counts={answer?.counts ?? null}
                chosen={line?.key ?? null}
                onChoose={choose}
              />
            )}
            <div>
              <Button look={lines.length === 0 ? 'main' : 'small'} onPress={() => add(null)}>
                {lines.length === 0 ? 'Type a figure' : 'Add a figure'}
              </Button>
            </div>
          </div>
        </Part>
        <Part name="trace" title="The chosen figure">
          {line === null && table === null ? (
            <p className="soft">The working of a figure opens here.</p>
          ) : (
            <div className="stack wide">
              {table === null ? null : (
                <TableForm
                  key={table}
                  file={table}
                  grid={desk.gridOf(table)}
                  judged={answer?.judged ?? []}
                  fault={faults[table] ?? unreadOf(answer, table)}
                  fresh={fresh === table}
                  onChange={(update, what) => desk.setGrid(table, update, what)}
                  onEnter={(id) => (id === null ? setChosen('') : openFigure(id))}
                />
              )}
              {line?.judged == null ? null : <VerdictWorking judged={line.judged} onOpen={openFigure} />}
              {draft === null || drafts[draft] === undefined ? null : (
                <ClaimForm
                  key={draft}
                  draft={drafts[draft]}
                  fault={answer?.lines[draft]?.fault ?? null}
                  fresh={fresh === draft}
                  attributes={attributes}
                  onChange={(part) => desk.setDraft(draft, part)}
                  onNext={() => add(draft)}
                  onRemove={() => {
                    setFresh(null);
                    setChosen(null);
                    desk.removeDraft(draft);
                  }}
                />
              )}
            </div>
          )}
        </Part>
        <Part name="more" title="The full working">
          {answer === null || answer.judged.length === 0 ? (
            <p className="soft">The tables come with the first figure.</p>
          ) : (
            <Tables tables={Object.entries(answer.tables)} />
          )}
        </Part>
      </div>
    </ScreenFrame>
  );
}

/** Cells of a table of which nothing was made. */
function unreadOf(answer: ClaimsView | null, file: string): string | null {
  const unread = answer?.printed.find((one) => one.file === file)?.unread ?? [];
  return unread.length === 0 ? null : unread.join('; ');
}

export const printedFigures: Screen = {
  id: 'printed-figures',
  name: 'Printed figures',
  question: QUESTION,
  waits: () => null,
  View: PrintedFiguresScreen,
};
