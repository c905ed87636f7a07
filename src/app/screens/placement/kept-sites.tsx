import { Button as AriaButton } from 'react-aria-components';
import { Button } from '../../parts/controls.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis, withoutAnalysis } from '../../state/workspace.ts';

export interface KeptSitesProps {
  readonly kept: readonly StudyAnalysis[];
  readonly open: StudyAnalysis;
  readonly onOpen: (id: string) => void;
}

const nameOf = (standing: StudyAnalysis) => String(standing.title ?? standing.site);

/** The sites whose standing the study keeps; each is an analysis that the command line runs too. */
export function KeptSites({ kept, open, onOpen }: KeptSitesProps) {
  const { change } = useWorkbench();
  const isKept = kept.some(({ id }) => id === open.id);
  const keep = (standing: StudyAnalysis) => {
    change((now) => withAnalysis(now, standing), `keep the standing of ${standing.site}`);
    onOpen(standing.id);
  };
  const another = () => {
    const taken = new Set(kept.map(({ id }) => id));
    let number = kept.length + 1;
    while (taken.has(`standing-${number}`)) number++;
    const { title: _title, ...options } = open;
    keep({ ...options, id: `standing-${number}`, kind: 'standing' });
  };
  return (
    <div className="stack">
      {kept.length < 2 ? null : (
        <ul className="kept-finds" aria-label="Sites that are kept">
          {kept.map((standing) => (
            <li key={standing.id}>
              <AriaButton
                className="source-way"
                {...(standing.id === open.id ? { 'aria-current': 'true' as const } : {})}
                onPress={() => onOpen(standing.id)}
              >
                {nameOf(standing)}
              </AriaButton>
            </li>
          ))}
        </ul>
      )}
      <div className="line">
        {isKept ? (
          <>
            <Button look="small" onPress={another}>
              Another site
            </Button>
            <Button
              look="plain small"
              onPress={() => change((now) => withoutAnalysis(now, open.id), `let ${nameOf(open)} go`)}
            >
              Let go
            </Button>
          </>
        ) : (
          <Button look="small" onPress={() => keep(open)}>
            Keep it in the study
          </Button>
        )}
      </div>
    </div>
  );
}
