import { assemblages } from './assemblages/index.tsx';
import { contrasts } from './contrasts/index.tsx';
import { kinship } from './kinship/index.tsx';
import { placement } from './placement/index.tsx';
import { printedFigures } from './printed-figures/index.tsx';
import { region } from './region/index.tsx';
import type { Screen } from './screen.ts';
import { sources } from './sources/index.tsx';
import { takeAway } from './take-away/index.tsx';
import { typeRules } from './type-rules/index.tsx';

/** The screens, left to right as the work goes. A new one is a folder and a line here. */
export const SCREENS: readonly Screen[] = [
  sources,
  assemblages,
  region,
  contrasts,
  kinship,
  typeRules,
  placement,
  printedFigures,
  takeAway,
];
