import { memo, useEffect, useMemo, useState } from 'react';
import type { AnalysisResult } from '../../../study/results/results.ts';
import { useRun } from '../../engine/use-run.ts';
import type { AttributeView } from '../../engine/views/study.ts';
import { isComparable, NOTHING_COMPARABLE } from '../../parts/asking/attribute-options.ts';
import { Button } from '../../parts/controls.tsx';
import { PickedPanel } from '../../parts/records/picked-panel.tsx';
import { FaultNote, Part, Said, ScreenFrame } from '../../parts/screen.tsx';
import { Working } from '../../parts/working.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';
import type { Screen } from '../screen.ts';
import { AskForm } from './ask-form.tsx';
import { apartIn, axesOf, groupsOf, withAlike, withAxes, withGroups } from './kin-axes.ts';
import { KinFigures } from './kin-figures.tsx';
import { KinTables } from './kin-tables.tsx';
import { useNearest } from './use-nearest.ts';
import type { BlockWeights } from './weights.tsx';

const QUESTION = 'Which finds are akin, and do they fall into groups?';

const NO_ATTRIBUTES: readonly AttributeView[] = [];

/** Not drawn anew while a weight is dragged and there is no new answer. */
const StillFigures = memo(KinFigures);
const StillTables = memo(KinTables);

/** A first look at the groups, marked as one; the study's own question is asked as soon as nothing changes. */
const QUICK = { resamples: 0, permutations: 0, variants: false };
const STILL = 1200;

function KinshipScreen() {
  const { workspace, view, change } = useWorkbench();
  const attributes = view?.attributes ?? NO_ATTRIBUTES;
  const { analyses } = workspace.study;
  const saved = groupsOf(analyses);
  const savedAxes = axesOf(analyses, attributes);
  const savedWeights = weightsOf(saved);
  const [draft, setDraft] = useState<BlockWeights | null>(null);
  const groups: StudyAnalysis = draft === null ? saved : { ...saved, weights: { ...draft } };
  const key = JSON.stringify(saved);
  const quickly = useMemo<StudyAnalysis>(() => ({ ...(JSON.parse(key) as StudyAnalysis), ...QUICK }), [key]);
  const axesKey = JSON.stringify(savedAxes);
  const axes = useMemo(() => JSON.parse(axesKey) as StudyAnalysis, [axesKey]);
  const quick = useRun(quickly, undefined, false);
  const full = useRun(draft === null ? saved : null, STILL);
  const grouping = full.current ? full : quick;
  const ordination = useRun(axes);
  const medoids = useMemo(() => medoidsOf(grouping.result), [grouping.result]);
  // While a weight is dragged the groups keep their medoids; they are made anew when it is let go.
  const nearest = useNearest(draft === null ? null : groups, medoids);
  // A draft ends when the study has taken it over (or has been taken back to another state).
  // Only a change of the saved analysis ends the draft
  useEffect(() => setDraft(null), [saved]);

  const set = (options: Readonly<Record<string, unknown>>, what: string) =>
    change((now) => withGroups(now, options, attributes), what);
  const apart = apartIn(savedAxes, saved, attributes);
  const { result, fault } = grouping;
  const stopped = quick.stopped || full.stopped;
  const running = quick.running ?? full.running;
  const again = quick.stopped ? quick.again : full.again;
  const computed = result !== null && result.why === undefined;
  return (
    <ScreenFrame
      question={QUESTION}
      lead="Every pair of finds is compared in three parts, structure, spacing and fibre. You decide how much each part counts."
    >
      <div className="parts kinship">
        <Part name="ask" title="What counts, and how groups are made">
          <AskForm
            analysis={saved}
            weights={draft ?? savedWeights}
            onDrag={setDraft}
            onWeights={(weights) =>
              set({ weights: { ...(saved.weights as object | undefined), ...weights } }, 'other weights')
            }
            onSet={set}
            axes={savedAxes}
            onAxes={(options, what) => change((now) => withAxes(now, options, attributes), what)}
          />
        </Part>
        <Part name="see" title="The map of kin and the groups">
          <div className="stack">
            <div className="status-line">
              {running === null ? null : <Working {...running} onStop={full.stop} />}
              {stopped ? (
                <div className="line">
                  <span>Stopped; what you see is the answer before.</span>
                  <Button look="small" onPress={again}>
                    Compute it
                  </Button>
                </div>
              ) : null}
            </div>
            {[fault, ordination.fault, computed ? mapless(ordination.result) : null].map((text) =>
              text === null ? null : <FaultNote key={text} text={text} />,
            )}
            {apart.length === 0 ? null : (
              <div className="line">
                <span>
                  The map is the study’s own, and compares finds otherwise than the groups do (
                  {apart.join(', ').toLowerCase()}).
                </span>
                <Button
                  look="small"
                  onPress={() =>
                    change((now) => withAlike(now, attributes), 'one comparison for map and groups')
                  }
                >
                  Draw what the groups compare
                </Button>
              </div>
            )}
            <StillFigures grouping={result} ordination={ordination.result} nearest={nearest} />
          </div>
        </Part>
        <Part name="say" title="What can be said">
          {result === null ? (
            <p className="soft">Waiting for the first answer.</p>
          ) : (
            <div className="stack">
              {full.current ? null : (
                <p className="small soft" role="status">
                  A quick look, not yet tested: items are still to be drawn anew and attributes shuffled. The
                  full answer takes its place.
                </p>
              )}
              <Said words={result.words} />
              {ordination.result === null || !computed ? null : <AboutTheMap {...ordination.result} />}
            </div>
          )}
        </Part>
        <Part name="trace" title="What is picked">
          <PickedPanel analysis={groups} />
        </Part>
        <Part name="more" title="The numbers">
          <StillTables grouping={result} ordination={ordination.result} />
        </Part>
      </div>
    </ScreenFrame>
  );
}

/** What the axes carry, and what to mind about them, below what is said of the groups. */
function AboutTheMap({ words }: Pick<AnalysisResult, 'words'>) {
  return (
    <section className="stack tight small" aria-label="About the map">
      <Said words={words} />
    </section>
  );
}

/** Why there is no map, where an answer holds none. */
function mapless(result: AnalysisResult | null): string | null {
  if (result === null || result.tables.coordinates !== undefined) return null;
  return `The map cannot be drawn. ${result.words.answer}`;
}

function medoidsOf(result: AnalysisResult | null): readonly string[] {
  const table = result?.tables.groups;
  const at = table?.columns.findIndex(({ id }) => id === 'medoid') ?? -1;
  return at < 0 ? [] : (table?.rows ?? []).map((row) => String(row[at]));
}

function weightsOf(analysis: StudyAnalysis): BlockWeights {
  const given = analysis.weights as Partial<BlockWeights> | undefined;
  return { structure: given?.structure ?? 1, spacing: given?.spacing ?? 1, fibre: given?.fibre ?? 1 };
}

export const kinship: Screen = {
  id: 'kinship',
  name: 'Kinship',
  question: QUESTION,
  waits: ({ workspace, view }) =>
    workspace.study.sources.length === 0 || view === null
      ? 'There is nothing to compare yet: bring tables first.'
      : view.attributes.some(isComparable)
        ? null
        : NOTHING_COMPARABLE,
  View: KinshipScreen,
};
