import { useDeferredValue, useEffect, useState } from 'react';
import type { DrawingView } from '../../../engine/views/records.ts';
import { StructureSchema } from '../../../parts/pictures/structure-schema.tsx';
import { useWorkbench } from '../../../state/workbench.tsx';

type Texts = Readonly<Record<string, string>>;

/** What the described structure looks like, as it is read; nothing where it has no drawing. */
export function FindSchema({ find }: { readonly find: Texts }) {
  const drawing = useDrawing(useDeferredValue(find));
  return drawing === null ? null : <StructureSchema drawing={drawing} of="the find" />;
}

function useDrawing(find: Texts): DrawingView | null {
  const { engine, workspace, view } = useWorkbench();
  const [drawing, setDrawing] = useState<DrawingView | null>(null);
  const { study } = workspace;
  const key = JSON.stringify(find);
  // The view says when the register may have changed
  useEffect(() => {
    let current = true;
    engine
      .ask((remote) => remote.drawing(study, JSON.parse(key) as Texts) as Promise<DrawingView | null>)
      .then(
        (found) => current && setDrawing(found),
        () => current && setDrawing(null),
      );
    return () => {
      current = false;
    };
  }, [engine, view, key]);
  return drawing;
}
