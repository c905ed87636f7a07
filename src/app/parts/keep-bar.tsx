import { useState } from 'react';
import { findingOf, type Look, notKept, questionKey } from '../state/looks.ts';
import { useDraft, useWorkbench } from '../state/workbench.tsx';
import { withAnalysis } from '../state/workspace.ts';
import { Button, Entry } from './controls.tsx';

/** What was looked at here and is no finding of the study yet, ready to be kept with a title and a note. */
export function KeepBar({ screen }: { readonly screen: string }) {
  const { looks, workspace } = useWorkbench();
  const [look] = notKept(
    looks.filter((one) => one.screen === screen),
    workspace.study.analyses,
  );
  if (look === undefined) return null;
  return (
    <section className="keep-bar sheet" aria-label="Keep what is seen">
      <p className="part-name">Keep this finding</p>
      <p>{look.answer}</p>
      <KeepForm look={look} place={`keep ${questionKey(look.analysis)}`} />
    </section>
  );
}

/** Everything that was looked at on any screen and not kept. */
export function NotKept() {
  const { looks, workspace } = useWorkbench();
  const open = notKept(looks, workspace.study.analyses);
  if (open.length === 0) return null;
  return (
    <section className="stack" aria-label="Looked at, not kept">
      <h3>Looked at, not kept</h3>
      <p className="small soft">These are not in the study, and so in no report, until you keep them.</p>
      <ul className="looks stack">
        {open.map((look) => (
          <li key={JSON.stringify(look.analysis)} className="stack tight">
            <p>{look.answer}</p>
            <KeepForm look={look} place={`keep ${questionKey(look.analysis)}`} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function KeepForm({ look, place }: { readonly look: Look; readonly place: string }) {
  const { change } = useWorkbench();
  const [typed, setTyped] = useDraft<{ readonly title: string; readonly note: string }>(place);
  const [open, setOpen] = useState(typed !== undefined);
  const { title, note } = typed ?? { title: String(look.analysis.title ?? ''), note: '' };
  const keep = () => {
    change(
      (now) => withAnalysis(now, findingOf(look, now.study.analyses, { title, note })),
      'keep a finding',
    );
    setTyped(undefined);
    setOpen(false);
  };
  if (!open)
    return (
      <div>
        <Button look="small" onPress={() => setOpen(true)} label={`Keep: ${look.answer}`}>
          Keep …
        </Button>
      </div>
    );
  return (
    <div className="line">
      <Entry
        label="Title of the finding"
        value={title}
        onChange={(next) => setTyped({ title: next, note })}
        onDone={() => undefined}
      />
      <Entry
        label="Note on the finding"
        value={note}
        onChange={(next) => setTyped({ title, note: next })}
        onDone={() => undefined}
      />
      <Button look="small" onPress={keep}>
        Keep
      </Button>
    </div>
  );
}
