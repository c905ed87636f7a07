import { useEffect, useState } from 'react';
import { faultText, Stopped } from '../../engine/client.ts';
import type { TypesView } from '../../engine/views/types.ts';
import { useWorkbench } from '../../state/workbench.tsx';

/** What the rules of this text answer, asked of the worker whenever the text or the material changes. */
export function useTypes(text: string | null, file: string): TypesView | null {
  const { workspace, view, engine } = useWorkbench();
  const [answer, setAnswer] = useState<TypesView | null>(null);
  const { study } = workspace;
  // The view stands for the material: titles and analyses do not change what the rules answer
  useEffect(() => {
    if (text === null || view === null) return;
    let current = true;
    const timer = setTimeout(async () => {
      try {
        const found = await engine.ask((remote) => remote.types(study, text, file) as Promise<TypesView>);
        if (current) setAnswer(found);
      } catch (error) {
        if (current && !(error instanceof Stopped))
          setAnswer((now) => (now === null ? null : { ...now, fault: faultText(error) }));
      }
    }, 40);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [text, file, view, engine]);
  return answer;
}
