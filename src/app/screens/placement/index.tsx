import { useState } from 'react';
import { Toggles } from '../../parts/controls.tsx';
import { ScreenFrame } from '../../parts/screen.tsx';
import { useWorkbench } from '../../state/workbench.tsx';
import type { Screen } from '../screen.ts';
import { PlaceFind } from './find.tsx';
import { PlaceSite } from './site.tsx';

const PLACED = {
  find: {
    name: 'a find',
    question: 'Where does this find belong, and how sure is that?',
    lead: 'Type what was measured, as it stands in your notes: “c. 3.2 cm”, “8-10 per 5 cm”, “<2”. What is unknown stays blank.',
    View: PlaceFind,
  },
  site: {
    name: 'a whole site',
    question: 'Where does this site sit in its region?',
    lead: 'Whom it is like and how sure that is, where it falls among the others, what sets it apart, and which of its items are at home elsewhere.',
    View: PlaceSite,
  },
} as const;

type What = keyof typeof PLACED;

function PlacementScreen() {
  const { workspace } = useWorkbench();
  const [what, setWhat] = useState<What>(() => {
    const { analyses } = workspace.study;
    const has = (kind: string) => analyses.some((analysis) => analysis.kind === kind);
    return has('standing') && !has('placement') ? 'site' : 'find';
  });
  const { question, lead, View } = PLACED[what];
  return (
    <ScreenFrame question={question} lead={lead}>
      <div className="line screen-mode">
        <span aria-hidden="true">Placed is:</span>
        <Toggles
          label="What is placed"
          value={what}
          options={Object.entries(PLACED).map(([id, { name }]) => ({ id, label: name }))}
          onChange={(id) => setWhat(id as What)}
        />
      </div>
      <View />
    </ScreenFrame>
  );
}

export const placement: Screen = {
  id: 'placement',
  name: 'Placement',
  question: 'Where does a find, or a whole site, belong, and how sure is that?',
  waits: ({ workspace, view }) =>
    workspace.study.sources.length === 0 || view === null
      ? 'There is nothing to set it against yet: bring tables first.'
      : null,
  View: PlacementScreen,
};
