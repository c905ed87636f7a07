import type { ComponentType } from 'react';
import type { Workbench } from '../state/workbench.tsx';

export interface Screen {
  readonly id: string;
  readonly name: string;
  /** What it answers, as a reader would ask it; heads the page. */
  readonly question: string;
  /** Why it cannot answer yet, in a sentence that says what would help; null when it can. */
  readonly waits: (bench: Workbench) => string | null;
  readonly View: ComponentType;
}
