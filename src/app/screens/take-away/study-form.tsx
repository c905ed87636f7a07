import { KIND_LANGUAGES, LANGUAGE_NAMES } from '../../../attributes/naming/languages.ts';
import { Choice, Entry } from '../../parts/controls.tsx';
import { count } from '../../parts/numbers.ts';
import { useDraft, useWorkbench } from '../../state/workbench.tsx';
import { withAuthors, withStudy } from '../../state/workspace.ts';

/** Title and seed of the study, and what it holds. */
export function StudyForm() {
  const { workspace, view, change } = useWorkbench();
  const { study } = workspace;
  const [typedTitle, setTitle] = useDraft<string>('title of the study');
  const [typedAuthors, setAuthors] = useDraft<string>('authors of the study');
  const [typedSeed, setSeed] = useDraft<string>('seed of the study');
  const title = typedTitle ?? study.title;
  const seed = typedSeed ?? String(study.seed);
  const seedValue = Number(seed);
  const seedFits = /^\d{1,9}$/.test(seed);
  return (
    <div className="stack">
      <Entry
        label="Title"
        value={title}
        onChange={setTitle}
        onDone={() => {
          const next = title.trim();
          setTitle(undefined);
          if (next !== '' && next !== study.title)
            change((now) => withStudy(now, { title: next }), 'change the title');
        }}
      />
      <Entry
        label="Authors"
        value={typedAuthors ?? study.authors ?? ''}
        reading="Who answers for it, as you are to be cited; stands in report and brief."
        onChange={setAuthors}
        onDone={() => {
          const next = (typedAuthors ?? study.authors ?? '').trim();
          setAuthors(undefined);
          if (next !== (study.authors ?? ''))
            change((now) => withAuthors(now, next), next === '' ? 'no authors' : `authors ${next}`);
        }}
      />
      <Entry
        label="Seed of chance"
        value={seed}
        onChange={setSeed}
        invalid={!seedFits}
        reading={
          seedFits
            ? 'All drawing of lots starts from it; the same seed gives the same results.'
            : 'A whole number without a sign, please.'
        }
        onDone={() => {
          setSeed(undefined);
          if (seedFits && seedValue !== study.seed)
            change((now) => withStudy(now, { seed: seedValue }), `seed ${seedValue}`);
        }}
      />
      <Choice
        label="Kinds of fabric are named in"
        value={study.kindLanguage ?? 'en'}
        options={KIND_LANGUAGES.map((id) => ({ id, label: LANGUAGE_NAMES[id] }))}
        onChange={(id) => {
          const kindLanguage = KIND_LANGUAGES.find((one) => one === id) ?? 'en';
          change((now) => withStudy(now, { kindLanguage }), `kinds named in ${LANGUAGE_NAMES[kindLanguage]}`);
        }}
      />
      <dl className="facts">
        <div>
          <dt>Tables</dt>
          <dd>{study.sources.length}</dd>
        </div>
        <div>
          <dt>Fragments</dt>
          <dd>
            {view?.selected ?? 0}
            {view !== null && view.selected !== view.fragments ? ` of ${view.fragments}` : ''}
          </dd>
        </div>
        <div>
          <dt>Analyses</dt>
          <dd>{study.analyses.length}</dd>
        </div>
      </dl>
      <ul className="small soft analyses">
        {study.analyses.map((analysis) => (
          <li key={analysis.id}>{headingOf(analysis)}</li>
        ))}
      </ul>
      <p className="small soft">{count(study.select?.length ?? 0, 'condition')} in the selection.</p>
    </div>
  );
}

/** As the report heads it; one that was given no heading by its id. */
function headingOf({ id, ...analysis }: { readonly id: string; readonly title?: unknown }): string {
  return typeof analysis.title === 'string' ? analysis.title : id;
}
