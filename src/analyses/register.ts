import { z } from 'zod';
import { chronology } from './chronology/index.ts';
import { claims } from './claims/index.ts';
import type {
  Analysis,
  AnalysisInput,
  Answer,
  Counts,
  Figure,
  Findings,
  Leads,
  ResultTable,
  ShortVerdict,
} from './contract.ts';
import { contrast } from './contrast/index.ts';
import { crosstab } from './crosstab/index.ts';
import { grouping } from './grouping/index.ts';
import { map } from './map/index.ts';
import { ordination } from './ordination/index.ts';
import { placement } from './placement/index.ts';
import { similarity } from './similarity/index.ts';
import { standing } from './standing/index.ts';
import { summary } from './summary/index.ts';
import { threadcount } from './threadcount/index.ts';
import { typology } from './typology/index.ts';
import { unlabelledIn, withUnlabelled } from './unlabelled.ts';

/** An analysis as a study sees it: what may be asked, and one step from options to the answer. */
export interface RegisteredAnalysis {
  readonly kind: string;
  readonly question: string;
  readonly options: z.ZodObject;
  readonly always: readonly string[];
  readonly leads: Leads;
  /** Attributes whose labels are the answer. */
  readonly labels: (input: AnalysisInput, options: unknown) => readonly string[];
  /** @param alone whether nothing but the verdict and the answer is wanted; there are then no tables and no figures. */
  readonly run: (input: AnalysisInput, options: unknown, alone?: boolean) => Answered;
}

/** All that is shown of one question. */
export interface Answered {
  readonly n: Counts;
  readonly tables: Readonly<Record<string, ResultTable>>;
  readonly figures: Readonly<Record<string, Figure>>;
  readonly words: Answer;
  /** The verdict in short; null where nothing is judged. */
  readonly verdict: ShortVerdict | null;
}

/** Every analysis that a study can name, by its kind. A new one is a folder and a line here. */
export const ANALYSES: readonly RegisteredAnalysis[] = [
  registered(summary),
  registered(contrast),
  registered(crosstab),
  registered(similarity),
  registered(grouping),
  registered(ordination),
  registered(typology),
  registered(placement),
  registered(standing),
  registered(threadcount),
  registered(chronology),
  registered(map),
  registered(claims),
];

function registered<Options, Found extends Findings>(analysis: Analysis<Options, Found>): RegisteredAnalysis {
  const { kind, question, options, always = [], leads = {} } = analysis;
  if (!(options instanceof z.ZodObject)) throw new Error(`the options of "${kind}" must be one zod object`);
  return {
    kind,
    question,
    options,
    always,
    leads,
    labels: (input, given) => analysis.labels?.(analysis.options.parse(given), input) ?? [],
    run: (input, given, alone = false) => {
      const asked = analysis.options.parse(given);
      const settled = alone ? (analysis.verdictAlone?.(asked) ?? asked) : asked;
      const found = analysis.compute(alone ? { ...input, alone } : input, settled);
      const unlabelled = unlabelledIn(input, analysis.labels?.(settled, input) ?? []);
      return {
        n: found.n,
        tables: alone ? {} : analysis.tables(found),
        figures: alone ? {} : analysis.figures(found),
        words: withUnlabelled(analysis.words(found), unlabelled),
        verdict: analysis.verdict?.(found) ?? null,
      };
    },
  };
}
