import type { Results } from '../../../study/results/results.ts';
import { fileStem } from '../../files.ts';
import { Button } from '../../parts/controls.tsx';
import { NotKept } from '../../parts/keep-bar.tsx';
import { FaultNote, Part, ScreenFrame } from '../../parts/screen.tsx';
import { Working } from '../../parts/working.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Screen } from '../screen.ts';
import { HANDLING, RIGHTS } from './cautions.ts';
import { FigureList } from './figure-list.tsx';
import { Goods } from './goods.tsx';
import { useSaving } from './saving.ts';
import { StudyForm } from './study-form.tsx';

const QUESTION = 'What do you take away?';

function TakeAwayScreen() {
  const { workspace, engine } = useWorkbench();
  const saving = useSaving();
  const { running, fault, results } = saving;
  return (
    <ScreenFrame
      question={QUESTION}
      lead="The study file holds the whole state of the work: with the tables beside it, anyone can run it again and get the same bytes."
    >
      <div className="parts away">
        <Part name="ask" title="The study">
          <div className="stack wide">
            <StudyForm />
            <NotKept />
          </div>
        </Part>
        <Part name="see" title="Files to save">
          <div className="stack wide">
            <Goods saving={saving} />
            {running === null ? null : <Working {...running} onStop={engine.stop} />}
            {fault === null ? null : <FaultNote text={fault} />}
          </div>
        </Part>
        <Part name="say" title="Figures for print">
          {results === null ? (
            <div className="stack">
              <p>
                The figures of every analysis as SVG, PDF or PNG, 84 or 174 mm wide, with letters that stay
                legible in print and in grey.
              </p>
              <div>
                <Button disabled={running !== null} onPress={() => void saving.compute()}>
                  Compute the study and list its figures
                </Button>
              </div>
            </div>
          ) : (
            <FigureList results={JSON.parse(results) as Results} stem={fileStem(workspace.study.title)} />
          )}
        </Part>
        <Part name="trace" title="Before you pass it on">
          <Cautions />
        </Part>
      </div>
    </ScreenFrame>
  );
}

function Cautions() {
  return (
    <div className="stack">
      {[HANDLING, RIGHTS].map(({ title, points }) => (
        <div key={title} className="stack tight">
          <h3>{title}</h3>
          <ul className="points">
            {points.map((point) => (
              <li key={point}>{point}</li>
            ))}
          </ul>
        </div>
      ))}
    </div>
  );
}

export const takeAway: Screen = {
  id: 'take-away',
  name: 'Take away',
  question: QUESTION,
  waits: ({ workspace, view }) => {
    const { sources, analyses } = workspace.study;
    const onlyClaims = sources.length === 0 && analyses.some(({ kind }) => kind === 'claims');
    return onlyClaims || (sources.length > 0 && view !== null)
      ? null
      : 'There is nothing to take away yet: bring tables first.';
  },
  View: TakeAwayScreen,
};
