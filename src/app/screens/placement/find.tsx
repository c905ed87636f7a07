import { memo, useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { placementOptions } from '../../../analyses/placement/options.ts';
import type { AnalysisResult } from '../../../study/results/results.ts';
import { usePreviewed } from '../../engine/use-previewed.ts';
import { isComparable, NOTHING_COMPARABLE } from '../../parts/asking/attribute-options.ts';
import { AttributeWeights } from '../../parts/asking/attribute-weights.tsx';
import { ComparisonSettings } from '../../parts/asking/comparison-settings.tsx';
import { Button, Choice } from '../../parts/controls.tsx';
import { CutChart } from '../../parts/pictures/cut-chart.tsx';
import { PickedPanel, pickedAfter } from '../../parts/records/picked-panel.tsx';
import { PreviewNote } from '../../parts/run-status.tsx';
import { FaultNote, Part, Said } from '../../parts/screen.tsx';
import { SimulatedNote } from '../../parts/simulated-note.tsx';
import { Tables } from '../../parts/tables.tsx';
import { Working } from '../../parts/working.tsx';
import { useDraft, useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';
import { CompareFinds } from './compare-finds.tsx';
import { comparisonOf } from './comparison-of.ts';
import { FindForm, type FindTexts } from './find-form/find-form.tsx';
import { FindNature } from './find-nature.tsx';
import { KeptFinds } from './kept-finds.tsx';
import { ManyFinds } from './many-finds.tsx';
import { NeighbourCards } from './neighbour-cards.tsx';
import { Percentiles } from './percentiles.tsx';
import { readPlacement } from './placement-answer.ts';
import { PlacementMap } from './placement-map.tsx';

const LaterMap = memo(PlacementMap);
const Strips = memo(Percentiles);
const AllTables = memo(({ result }: { readonly result: AnalysisResult }) => (
  <Tables tables={Object.entries(result.tables)} />
));

const QUICK = { moves: false, next: false, draws: 20 };

const NEW_FIND: StudyAnalysis = { id: 'find-1', kind: 'placement', title: 'Find 1', find: {} };

/** A find among its comparanda: form left, map in the middle, neighbours right, labels and numbers below. */
export function PlaceFind() {
  const { workspace, view, change, picked, pick } = useWorkbench();
  const placements = workspace.study.analyses.filter(({ kind }) => kind === 'placement');
  const [openId, setOpenId] = useState<string | null>(null);
  const saved = placements.find(({ id }) => id === openId) ?? placements[0] ?? NEW_FIND;
  const [kept, setKept] = useDraft<FindTexts>(`find ${saved.id}`);
  const draft = kept ?? null;
  const setDraft = (texts: FindTexts | null) => setKept(texts ?? undefined);
  const [chosenLevel, setLevel] = useState<number | null>(null);
  const [labelsOf, setLabelsOf] = useState<string | null>(null);
  // A change of the saved find ends the draft
  const before = useRef(saved);
  useEffect(() => {
    if (before.current.id === saved.id && before.current !== saved) setKept(undefined);
    before.current = saved;
  }, [saved, setKept]);
  const find = draft ?? ((saved.find ?? {}) as FindTexts);
  const key = JSON.stringify({ ...saved, find });
  const asked = useMemo(() => JSON.parse(key) as StudyAnalysis, [key]);
  const blank = Object.keys(find).length === 0;
  // While the reader types, a quick preview keeps up; the full answer follows.
  const { result, running, fault, stop, stopped, again, preview } = usePreviewed(
    blank ? null : asked,
    QUICK,
    15,
  );
  const answered = blank ? null : result;
  // Neighbours and labels follow each key stroke; the map and the long tables, slow to draw, come after.
  const later = useDeferredValue(answered);
  const answer = useMemo(() => (answered === null ? null : readPlacement(answered)), [answered]);
  const levels = answer?.levels ?? [];
  const level =
    levels.find((one) => one.level === chosenLevel)?.level ??
    levels.find(({ asked }) => asked)?.level ??
    null;
  const sets = [...(answer?.labelSets ?? new Map()).entries()];
  const shownSet = sets.find(([id]) => id === labelsOf) ?? sets[0];
  const comparable = (view?.attributes ?? []).some(isComparable);
  const recorded = useMemo(
    () =>
      (view?.attributes ?? [])
        .filter((attribute) => attribute.recorded > 0)
        .map(({ definition }) => definition.label),
    [view],
  );
  const of = saved.of as readonly string[] | undefined;
  const compared = useMemo(
    () =>
      of ??
      (view?.attributes ?? [])
        .filter((one) => isComparable(one) && one.recorded > 0 && one.definition.composed !== true)
        .map(({ definition }) => definition.id),
    [view, of],
  );
  const set = (more: Readonly<Record<string, unknown>>, what: string) =>
    change((now) => withAnalysis(now, { ...saved, ...more }), what);
  const percentiles = later?.tables.percentiles;
  const title = String(saved.title ?? `find “${saved.id}”`);
  return (
    <div className="parts placement">
      <Part name="ask" title="The find">
        <div className="stack wide">
          <KeptFinds placements={placements} open={saved} onOpen={setOpenId} />
          <FindNature placement={saved} />
          <FindForm
            key={saved.id}
            find={find}
            of={of ?? []}
            onDraft={setDraft}
            onKeep={(next, what) => change((now) => withAnalysis(now, { ...saved, find: next }), what)}
          />
          <AttributeWeights analysis={saved} compared={compared} onSet={set} />
          <ComparisonSettings schema={placementOptions} analysis={saved} onSet={set} />
        </div>
      </Part>
      <Part name="see" title="Among its comparanda">
        <div className="stack">
          <div className="status-line">
            {running === null ? null : <Working {...running} onStop={stop} />}
            {stopped ? (
              <Button look="small" onPress={again}>
                Stopped: compute it
              </Button>
            ) : null}
          </div>
          {fault === null ? null : <FaultNote text={fault} />}
          <LaterMap result={later} name={title} />
        </div>
      </Part>
      <Part name="say" title="What can be said">
        {answered === null ? (
          <p className="soft">
            {!comparable
              ? NOTHING_COMPARABLE
              : blank
                ? 'Give at least one attribute of the find.'
                : 'The find is being compared.'}
          </p>
        ) : (
          <>
            <PreviewNote preview={preview} />
            <Said words={answered.words} />
          </>
        )}
      </Part>
      <Part name="trace" title="Nearest comparanda">
        {answer === null ? (
          <p className="soft small">They come with the first measurement.</p>
        ) : (
          <NeighbourCards
            neighbours={answer.neighbours}
            picked={picked}
            onPick={(id, add) => pick(pickedAfter(picked, [id], add))}
          />
        )}
      </Part>
      <Part name="more" title="Which labels cannot be excluded">
        <div className="stack wide">
          {shownSet === undefined || level === null ? (
            <p className="soft">For each site, period or kind: how typical the find would be of it.</p>
          ) : (
            <>
              {sets.length < 2 ? null : (
                <div className="by">
                  <Choice
                    label="Labels by"
                    value={shownSet[0]}
                    options={sets.map(([id, set]) => ({ id, label: set.title }))}
                    onChange={setLabelsOf}
                  />
                </div>
              )}
              <CutChart
                labels={shownSet[1].labels}
                level={level}
                levels={levels.map((one) => one.level)}
                onLevel={setLevel}
                what={shownSet[1].title.toLowerCase()}
                order={answer?.orderOf(shownSet[0]) ?? null}
              />
              <SimulatedNote said={answer?.simulatedAt(shownSet[0], level) ?? null} />
            </>
          )}
          <ManyFinds
            like={{ ...saved, find: {} }}
            onKeep={(name, given) => {
              const taken = new Set(workspace.study.analyses.map(({ id }) => id));
              let number = placements.length + 1;
              while (taken.has(`find-${number}`)) number++;
              const id = `find-${number}`;
              change((now) => withAnalysis(now, { ...saved, id, title: name, find: given }), `keep ${name}`);
              setOpenId(id);
            }}
          />
          {level === null ? null : (
            <CompareFinds placements={placements} labelsOf={shownSet?.[0] ?? null} level={level} />
          )}
          {percentiles === undefined || shownSet === undefined ? null : (
            <Strips table={percentiles} by={shownSet[1].title} of={recorded} />
          )}
          {later === null ? null : <AllTables result={later} />}
          {picked.length === 0 ? null : (
            <div className="stack">
              <h3>What is picked</h3>
              <PickedPanel analysis={comparisonOf(asked)} />
            </div>
          )}
        </div>
      </Part>
    </div>
  );
}
