import { useMemo } from 'react';
import { similarityOptions } from '../../../analyses/similarity/options.ts';
import { usePreviewed } from '../../engine/use-previewed.ts';
import { useRun } from '../../engine/use-run.ts';
import { groupingOptions, kindOptions } from '../../parts/asking/attribute-options.ts';
import { useWorkbench } from '../../state/workbench.tsx';
import { type StudyAnalysis, withAnalysis } from '../../state/workspace.ts';
import type { TypedSite } from './new-site.tsx';
import { useRecordedWhere } from './recorded-where.tsx';

/** What the screen shows of the places. */
export type View = 'counts' | 'alike' | 'time' | 'recorded';

/** For a first look while the question is being put. */
const QUICK = { resamples: 399, relabellings: 999 };

/** What a reader may choose; the table of counts and the likeness are asked alike. */
interface Chosen {
  readonly places?: string;
  readonly of?: string;
  readonly level?: string;
  readonly mixtures?: string;
  readonly coefficient?: string;
  readonly newSites?: readonly TypedSite[];
}

/** The questions of the screen as the study has them, the one that is shown being asked. */
export function useAsked(shown: View) {
  const { workspace, view, change } = useWorkbench();
  const attributes = view?.attributes ?? [];
  const groups = useMemo(() => groupingOptions(attributes), [attributes]);
  const kinds = useMemo(() => kindOptions(attributes), [attributes]);
  const { analyses } = workspace.study;
  const savedTable = analyses.find(({ kind }) => kind === 'crosstab');
  const savedAlike = analyses.find(({ kind }) => kind === 'similarity');
  const places = (savedTable?.rows ?? savedAlike?.assemblages ?? groups[0]?.id ?? 'site') as string;
  const of = (savedTable?.columns ??
    savedAlike?.of ??
    kinds.find(({ id }) => id !== places)?.id ??
    'structure') as string;
  const table = useMemo<StudyAnalysis>(
    () =>
      ({
        ...(savedTable ?? { id: 'table', kind: 'crosstab' }),
        rows: places,
        columns: of,
      }) as StudyAnalysis,
    [savedTable, places, of],
  );
  const alike = useMemo<StudyAnalysis>(
    () =>
      ({
        ...(savedAlike ?? { id: 'alike', kind: 'similarity' }),
        assemblages: places,
        of,
      }) as StudyAnalysis,
    [savedAlike, places, of],
  );
  // Terms of a cut of one's own stay as the study has them.
  const level = similarityOptions.shape.level.parse((shown === 'alike' ? alike : table).level);
  const mixtures = similarityOptions.shape.mixtures.parse((shown === 'alike' ? alike : table).mixtures);
  const mixed = attributes.some(
    ({ definition, levels }) => definition.id === of && levels.some(({ id }) => id.includes('+')),
  );
  const counts = usePreviewed(shown === 'counts' ? table : null, QUICK, 150);
  const likeness = usePreviewed(shown === 'alike' ? alike : null, QUICK, 150);
  const asksRecorded = useRecordedWhere(places);
  const dated = attributes.some(({ definition, filled }) => definition.id === 'date' && filled > 0);
  const asksTime = useMemo<StudyAnalysis | null>(
    () => (dated ? { id: 'dated', kind: 'summary', of: ['date'], by: [places], resamples: 0 } : null),
    [dated, places],
  );
  const recorded = useRun(shown === 'recorded' ? asksRecorded : null, 150);
  const time = useRun(shown === 'time' ? asksTime : null, 150);
  const run = { alike: likeness, counts, recorded, time }[shown];
  const set = (options: Chosen, what: string) =>
    change((now) => {
      const where = options.places ?? places;
      const kind = options.of ?? of;
      const level = options.level === undefined ? {} : { level: options.level };
      const mixing = options.mixtures === undefined ? {} : { mixtures: options.mixtures };
      const next = withAnalysis(now, { ...table, ...level, ...mixing, rows: where, columns: kind });
      return withAnalysis(next, {
        ...alike,
        ...level,
        ...mixing,
        assemblages: where,
        of: kind,
        ...(options.coefficient === undefined ? {} : { coefficient: options.coefficient }),
        // Counts typed in are of the kinds that were asked for.
        ...(options.of === undefined ? {} : { newSites: [] }),
        ...(options.newSites === undefined ? {} : { newSites: options.newSites }),
      });
    }, what);
  return { attributes, groups, kinds, places, of, level, mixtures, mixed, alike, dated, run, set };
}

export type Asked = ReturnType<typeof useAsked>;
