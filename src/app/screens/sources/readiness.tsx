import type { ReadinessLine } from '../../../study/results/results.ts';
import { Button } from '../../parts/controls.tsx';
import { Part } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import { withoutShrinkage, withStudy } from '../../state/workspace.ts';
import { CompoundQuestions, NearQuestions } from './name-questions.tsx';
import { WitnessQuestion } from './witness-question.tsx';

const STATE_WORDS = { ready: 'Ready.', mind: 'Mind.', ask: 'Open.' } as const;

/** Whether the data carry a verdict, a line for each thing that verdicts lean on; what is open is answered here. */
export function Readiness() {
  const { view } = useWorkbench();
  if (view === null || view.fragments === 0) return null;
  return (
    <Part name="more" title="Are the data ready?">
      <ul className="readiness stack tight">
        {view.readiness.map((line) => (
          <li key={line.says}>
            <strong>{STATE_WORDS[line.state]}</strong> {line.says}
            <Settle line={line} />
          </li>
        ))}
      </ul>
    </Part>
  );
}

function Settle({ line }: { line: ReadinessLine }) {
  if (line.topic === 'names') return <NearQuestions />;
  if (line.topic === 'compounds') return <CompoundQuestions />;
  if (line.topic === 'shrinkage') return <Shrinkage />;
  if (line.topic !== 'witness' || line.state === 'ready') return null;
  return <WitnessQuestion suggested={line.state === 'ask'} />;
}

/** Shares by which a piece may have shrunk; trials on modern fibre lie within them (common practice, no source). */
const SHARES = [0.1, 0.2, 0.3];
const SHRINKING = ['charred', 'desiccated', 'impression'];

function Shrinkage() {
  const { workspace, change } = useWorkbench();
  const stated = workspace.study.shrinkage;
  return (
    <div className="line">
      <span>Ask verdicts again as before shrinking by up to</span>
      {SHARES.map((upTo) => (
        <Button
          key={upTo}
          look="small"
          disabled={stated?.upTo === upTo}
          onPress={() =>
            change(
              (now) =>
                withStudy(now, { shrinkage: { preservation: stated?.preservation ?? SHRINKING, upTo } }),
              'a shrinkage',
            )
          }
        >
          {`${Math.round(100 * upTo)} %`}
        </Button>
      ))}
      {stated === undefined ? null : (
        <Button look="small" onPress={() => change(withoutShrinkage, 'no shrinkage')}>
          Do not ask
        </Button>
      )}
    </div>
  );
}
