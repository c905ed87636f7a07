import type { ComponentType } from 'react';
import type { Workbench } from '../state/workbench.tsx';
import { assemblages } from './assemblages/index.tsx';
import { contrasts } from './contrasts/index.tsx';
import { kinship } from './kinship/index.tsx';
import { placement } from './placement/index.tsx';
import { printedFigures } from './printed-figures/index.tsx';
import { sources } from './sources/index.tsx';
import { takeAway } from './take-away/index.tsx';
import { typeRules } from './type-rules/index.tsx';

export interface Screen {
  readonly id: string;
  readonly name: string;
  /** What it answers, as a reader would ask it; heads the page. */
  readonly question: string;
  /** Why it cannot answer yet, in a sentence that says what would help; null when it can. */
  readonly waits: (bench: Workbench) => string | null;
  readonly View: ComponentType;
}

/** The screens, left to right as the work goes. A new one is a folder and a line here. */
export const SCREENS: readonly Screen[] = [
  sources,
  assemblages,
  contrasts,
  kinship,
  typeRules,
  placement,
  printedFigures,
  takeAway,
];
