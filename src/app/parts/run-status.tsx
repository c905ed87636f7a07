import type { Run } from '../engine/use-run.ts';
import { Button } from './controls.tsx';
import { FaultNote, Said } from './screen.tsx';
import { Working } from './working.tsx';

/** How far a run is, how to end it, and what stopped it. */
export function RunStatus({ run }: { run: Run }) {
  return (
    <>
      <div className="status-line">
        {run.running === null ? null : <Working {...run.running} onStop={run.stop} />}
        {run.stopped ? (
          <div className="line">
            <span>Stopped; what you see is the answer before.</span>
            <Button look="small" onPress={run.again}>
              Compute it
            </Button>
          </div>
        ) : null}
      </div>
      {run.fault === null ? null : <FaultNote text={run.fault} />}
    </>
  );
}

/** That a quick preview is shown, and that it will give way. */
export function PreviewNote({ preview }: { readonly preview: boolean }) {
  if (!preview) return null;
  return <p className="small soft">A quick preview; the full answer takes its place when it is computed.</p>;
}

/** The sentence of the last answer, or that none has come yet. */
export function RunSaid({
  run,
  asked = true,
}: {
  run: Run & { readonly preview?: boolean };
  asked?: boolean;
}) {
  if (run.result === null)
    return <p className="soft">{asked ? 'Waiting for the first answer.' : 'Nothing is asked yet.'}</p>;
  return (
    <>
      <PreviewNote preview={run.preview === true} />
      <Said words={run.result.words} />
    </>
  );
}
