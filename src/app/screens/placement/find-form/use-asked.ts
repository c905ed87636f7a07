import { useEffect, useState } from 'react';
import type { DescribedView, Engine, TypedReading } from '../../../engine/protocol.ts';
import { useWorkbench } from '../../../state/workbench.tsx';
import type { StudyDocument } from '../../../state/workspace.ts';

/** How a typed text is read, live; null while it is blank. */
export function useTyped(attribute: string, text: string): TypedReading | null {
  return useAsked<TypedReading>(text, attribute, (remote, study) => remote.typed(study, attribute, text));
}

/** How a description of a structure is parted, live; null while it is blank. */
export function useDescribed(text: string): DescribedView | null {
  return useAsked<DescribedView>(text, 'structure', (remote, study) => remote.described(study, text));
}

function useAsked<T>(
  text: string,
  attribute: string,
  ask: (remote: Engine, study: StudyDocument) => Promise<T>,
): T | null {
  const { engine, workspace, view } = useWorkbench();
  const [answer, setAnswer] = useState<T | null>(null);
  // The view says when the register may have changed
  useEffect(() => {
    if (text.trim() === '') return setAnswer(null);
    let current = true;
    engine
      .ask((remote) => ask(remote as unknown as Engine, workspace.study))
      .then(
        (found) => current && setAnswer(() => found),
        () => undefined,
      );
    return () => {
      current = false;
    };
  }, [engine, view, attribute, text]);
  return answer;
}
