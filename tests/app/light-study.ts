import { z } from 'zod';
import { ANALYSES } from '../../src/analyses/register.ts';

/** What options are called that say how often chance is asked; answers take the longer, the more. */
const TURNS = ['resamples', 'permutations', 'relabellings', 'deals', 'draws'];
/** With fewer tables without groups than this nothing could be told at 95 %. */
const FEW = 19;

interface Asked {
  readonly kind: string;
}

/**
 * The same study with chance asked as seldom as its options allow: for tests of what a screen does with an answer,
 * whichever it is. What the answers are is held against the library's with the study as it stands.
 */
export function lightStudy(text: string): string {
  const study = JSON.parse(text) as { readonly analyses: readonly Asked[] };
  return JSON.stringify({ ...study, analyses: study.analyses.map((asked) => ({ ...asked, ...few(asked) })) });
}

function few({ kind }: Asked): Record<string, number> {
  const options = ANALYSES.find((analysis) => analysis.kind === kind)?.options;
  if (options === undefined) throw new Error(`the study asks for "${kind}", which nothing answers`);
  const { properties = {} } = z.toJSONSchema(options, { io: 'input' });
  return Object.fromEntries(
    TURNS.flatMap((name) => {
      const option = properties[name];
      return typeof option === 'object' ? [[name, Math.max(FEW, option.minimum ?? 0)]] : [];
    }),
  );
}
