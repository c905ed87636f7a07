/**
 * Do verdicts stay what they are when the same finds are written down otherwise? Invented regions of five sites, each
 * written once with care (every item numbered, close terms, readings to 0.1 mm) and then as other hands would: broader
 * words for structure and fibre, other units, rounding, item numbers missing or not confirmed, spellings of sites and
 * phases, gaps that go with preservation, marks of doubt, words of another language, other orders of rows and columns,
 * a file a site or one for all. Every answer is held against that of the careful writing:
 * the same, with or without a condition that the careful writing has not; cannot be told, or another said with what it hangs on; otherwise; reversed. Reversed is a difference the
 * other way, a verdict of "not told apart" where all are told apart and the reverse, another pair or place as the most alike without a
 * rival, or a set of labels that shares none with the careful one.
 *
 * npm run simulate -- recording [re-recordings [question]], some 2 seconds of one core each; of one question alone less.
 */
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { checkStudy } from '../../src/study/load.ts';
import type { AnalysisResult } from '../../src/study/results/results.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { StudyInput } from '../../src/study/schema.ts';
import {
  CAREFULLY,
  drawRecording,
  drawRegion,
  FIRST_SITE,
  inFull,
  type Recording,
  writeStudy,
} from './parts/recorders.ts';
import { runsAsked } from './parts/runs.ts';

const runs = runsAsked(200, 're-recordings, ten of each region');
const PER_REGION = 10;
const only = process.argv[3];
const quick = { relabellings: 99, resamples: 199 };
const QUESTIONS: Readonly<Record<string, string>> = {
  spacing: 'contrast: row spacing by phase (differs)',
  density: 'contrast: density by phase (does not)',
  table: 'crosstab: structure by site (go together)',
  fibres: 'crosstab: fibre by phase (do not)',
  alike: 'similarity: sites by structure',
  standing: 'standing of one site by structure',
  where: 'placement of a find by site',
};
const analyses = [
  { id: 'spacing', kind: 'contrast', of: ['rowSpacing'], by: 'phase', ...quick },
  { id: 'density', kind: 'contrast', of: ['density1'], by: 'phase', ...quick },
  { id: 'table', kind: 'crosstab', rows: 'site', columns: 'structure', ...quick },
  { id: 'fibres', kind: 'crosstab', rows: 'phase', columns: 'fibre', ...quick },
  { id: 'alike', kind: 'similarity', assemblages: 'site', of: 'structure', ...quick },
  { id: 'standing', kind: 'standing', site: FIRST_SITE, of: 'structure', ...quick },
  {
    id: 'where',
    kind: 'placement',
    find: { rowSpacing: '9', structure: 'open twining', fibre: 'lime bast' },
    labels: ['site'],
    findFrom: 'a site of the study',
    draws: 0,
    moves: false,
    next: false,
    map: false,
  },
].filter(({ id }) => only === undefined || id === only) as NonNullable<StudyInput['analyses']>;

const OUTCOMES = [
  'the same',
  'the same, on a condition',
  'cannot be told, or another on a condition',
  'otherwise',
  'reversed',
] as const;
type Outcome = (typeof OUTCOMES)[number];

/** Words by which an answer says what it hangs on. */
const CONDITION =
  /cannot be told|could not be computed|cannot be ruled out|for sure|if each|counted by|as long as|unless|hang|as recorded|words as|more closely|a tie of|equally/i;

/** A condition that explains no other verdict than that of names kept apart; another verdict under it is one reversed. */
const OF_NAMES = /one name|near names/;

const SAME = ['the same', 'the same, on a condition'] as const;

function compare(id: string, careful: string, other: string): Outcome {
  const conditional = CONDITION.test(other);
  const judge = (same: boolean, reversed: boolean): Outcome =>
    same
      ? SAME[Number((conditional || OF_NAMES.test(other)) && !CONDITION.test(careful))]!
      : conditional
        ? 'cannot be told, or another on a condition'
        : reversed
          ? 'reversed'
          : 'otherwise';
  if (id === 'where') return compareSets(careful, other);
  if (id === 'alike' || id === 'standing') {
    const [here, there] = [mostAlike(careful), mostAlike(other)];
    return judge(here === there, there !== '');
  }
  const [here, there] = [direction(careful), direction(other)];
  // Told apart with no direction named is no contrary of told apart with one.
  const unnamed = [here, there].includes('apart') && ![here, there].includes('not');
  return judge(here === there || unnamed, true);
}

/** "apart Late", "apart" or "not": which is larger, whether groups differ or two things go together. */
function direction(answer: string): string {
  if (/not told apart|could not be shown/.test(answer)) return 'not';
  const larger = answer.match(/larger in (\S+)/)?.[1];
  return larger === undefined ? 'apart' : `apart ${PHASES[larger.toLowerCase()] ?? larger}`;
}

/** Where all hands write alike, a phase has their name. */
const PHASES: Readonly<Record<string, string>> = {
  early: 'Early',
  earl: 'Early',
  früh: 'Early',
  late: 'Late',
  spät: 'Late',
};

function mostAlike(answer: string): string {
  return (answer.match(/most (?:alike are|like) ([^,;.]+)/)?.[1] ?? '').trim();
}

/** A set may be wider or narrower; that it shares no label with the careful one is a reversal. */
function compareSets(careful: string, other: string): Outcome {
  const [here, there] = [careful, other].map(
    (text) => new Set(text.split('|').filter((label) => label !== '' && label !== HANGS)),
  );
  const shared = [...there].filter((label) => here.has(label)).length;
  const hangs = other.startsWith(HANGS);
  if (there.size > 0 && shared === here.size && shared === there.size) return SAME[Number(hangs)]!;
  if (hangs || there.size === 0) return 'cannot be told, or another on a condition';
  return shared > 0 ? 'otherwise' : 'reversed';
}

/** Stands before the labels of a set that is said to hang on something. */
const HANGS = 'hangs';

/** What an answer says; of a placement the labels that stay possible, or that it cannot be told, or hangs. */
function saidOf(question: string, result: AnalysisResult): string {
  const { answer } = result.words;
  if (question !== 'where') return answer;
  const { columns, rows } = result.tables.sets ?? { columns: [], rows: [] };
  const cell = (row: (typeof rows)[number], id: string) =>
    row[columns.findIndex((column) => column.id === id)];
  const asked = rows.find((row) => cell(row, 'asked') === true || cell(row, 'asked') === 'yes');
  if (asked === undefined) return '';
  const labels = ['kept', 'tooFew']
    .flatMap((id) => String(cell(asked, id)).split(/, | and /))
    .filter((label) => label !== '')
    .map(inFull)
    .filter((label, place, all) => all.indexOf(label) === place)
    .sort();
  return [
    ...(/cannot be told yet|hangs on|one name|near names|if each|counted by/i.test(answer) ? [HANGS] : []),
    ...labels,
  ].join('|');
}

const root = createRandom(2026);
const tally = new Map(analyses.map(({ id }) => [String(id), new Map<Outcome, number>()]));
const reversals: string[] = [];
for (let region = 0; region * PER_REGION < runs; region++) {
  const random = root.stream(`region ${region}`);
  const finds = drawRegion(random.stream('finds'));
  const answersTo = (recording: Recording, name: string) => {
    const { study, files } = writeStudy(finds, recording, analyses, random.stream(name));
    const results = runStudy(checkStudy(study, 'study'), files);
    return new Map(Object.entries(results.analyses).map(([id, result]) => [id, saidOf(id, result)]));
  };
  const careful = answersTo(CAREFULLY, 'with care');
  // What there is so far, for whoever stops the run.
  if (region > 0 && region % 10 === 0) print(region * PER_REGION);
  for (let hand = 0; hand < PER_REGION && region * PER_REGION + hand < runs; hand++) {
    const recording = drawRecording(random.stream(`recording ${hand}`));
    for (const [id, other] of answersTo(recording, `written ${hand}`)) {
      const outcome = compare(id, careful.get(id) ?? '', other);
      const own = tally.get(id);
      own?.set(outcome, (own.get(outcome) ?? 0) + 1);
      if (outcome === 'reversed')
        reversals.push(`region ${region}, hand ${hand}, ${id}: ${careful.get(id)} -> ${other}`);
    }
  }
}
print(runs);

function print(of: number): void {
  console.log(`\n${of} re-recordings:\n\n| question | ${OUTCOMES.join(' | ')} |`);
  console.log(`|---|${OUTCOMES.map(() => '---').join('|')}|`);
  for (const [id, counts] of tally) {
    const share = (outcome: Outcome) => `${((100 * (counts.get(outcome) ?? 0)) / of).toFixed(1)} %`;
    console.log(`| ${QUESTIONS[id]} | ${OUTCOMES.map(share).join(' | ')} |`);
  }
  if (reversals.length > 0) console.error(`\n${reversals.join('\n')}`);
}
