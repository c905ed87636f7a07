import type { ComponentType } from 'react';
import type { AttributeView } from '../../engine/views/study.ts';
import type { StudyAnalysis } from '../../state/workspace.ts';

export interface AskProps {
  readonly asked: StudyAnalysis;
  readonly attributes: readonly AttributeView[];
  readonly set: (options: Readonly<Record<string, unknown>>, what: string) => void;
}

/** One picture of a region: what it asks of the study, and how it is put. */
export interface RegionPicture {
  readonly id: string;
  readonly label: string;
  /** What stands over the picture, where that hangs on what is asked. */
  readonly heading?: (asked: StudyAnalysis, attributes: readonly AttributeView[]) => string;
  readonly kind: string;
  /** Settings of a first look, while the question is being put. */
  readonly quick: Readonly<Record<string, unknown>>;
  /** Figure -> its name on screen, and the table behind it. */
  readonly figures: Readonly<Record<string, string>>;
  readonly tables: Readonly<Record<string, string>>;
  /** The question as it is first put; a sentence where the tables cannot answer it. */
  readonly first: (attributes: readonly AttributeView[]) => StudyAnalysis | string;
  readonly Ask: ComponentType<AskProps>;
}
