import { useState } from 'react';
import { ScreenFrame } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Screen } from '../screen.ts';
import { OwnAttributes } from './own-attributes.tsx';
import { Readiness } from './readiness.tsx';
import { SideBySide } from './side-by-side.tsx';
import { SourceDesk } from './source-desk.tsx';
import { Welcome } from './welcome.tsx';

const QUESTION = 'What do the tables say?';

function SourcesScreen() {
  const { workspace, view } = useWorkbench();
  const [chosen, setChosen] = useState(0);
  if (workspace.study.sources.length === 0) return <Welcome />;
  const index = Math.min(chosen, workspace.study.sources.length - 1);
  return (
    <ScreenFrame
      question={QUESTION}
      lead="On the left the rows as they stand in the file, on the right what was understood. Nothing is guessed in silence: what is doubtful is asked."
    >
      <SourceDesk source={view?.sources[index] ?? null} index={index} onChoose={setChosen} />
      <SideBySide />
      <OwnAttributes />
      <Readiness />
    </ScreenFrame>
  );
}

export const sources: Screen = {
  id: 'sources',
  name: 'Sources',
  question: QUESTION,
  waits: () => null,
  View: SourcesScreen,
};
