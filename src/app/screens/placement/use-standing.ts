import { useMemo } from 'react';
import { groupingOptions, kindOptions } from '../../parts/asking/attribute-options.ts';
import { useLabels } from '../../parts/use-labels.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import type { StudyAnalysis } from '../../state/workspace.ts';

export interface StandingQuestion {
  /** The question put, kept in the study or not; null where there are not two sites. */
  readonly asked: StudyAnalysis | null;
  readonly kept: readonly StudyAnalysis[];
  /** Labels that may be placed, in natural order; null until they are known. */
  readonly sites: readonly string[] | null;
}

/** The standing that is open: a kept one, or a new one for the first site. */
export function useStanding(openId: string | null): StandingQuestion {
  const { workspace, view } = useWorkbench();
  const { analyses } = workspace.study;
  const kept = useMemo(() => analyses.filter(({ kind }) => kind === 'standing'), [analyses]);
  const saved = kept.find(({ id }) => id === openId) ?? kept[0];
  const attributes = view?.attributes ?? [];
  const first = groupingOptions(attributes).find(({ id }) => id !== 'structure')?.id ?? 'assemblage';
  const among = (saved?.among as string | undefined) ?? (saved === undefined ? first : 'site');
  const labels = useLabels([among]);
  const sites = useMemo(
    () =>
      labels?.labels[among] === undefined
        ? null
        : [...new Set(labels.labels[among])]
            .filter((label) => label !== '')
            .sort((a, b) => a.localeCompare(b, 'en', { numeric: true })),
    [labels, among],
  );
  const kinds = kindOptions(attributes);
  const of = (saved?.of as string | undefined) ?? kinds.find(({ id }) => id !== among)?.id ?? 'structure';
  const site = sites === null || sites.includes(String(saved?.site)) ? saved?.site : sites[0];
  const key = JSON.stringify([saved, among, of, site]);
  const asked = useMemo<StudyAnalysis | null>(
    () =>
      site === undefined || (sites !== null && sites.length < 2)
        ? null
        : { ...(saved ?? { id: 'standing', kind: 'standing' }), among, of, site },
    // The key holds all that it is made of
    [key, sites?.length],
  );
  return { asked, kept, sites };
}
