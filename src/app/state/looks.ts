import type { StudyAnalysis } from './workspace.ts';

/** A question that was answered in full on a screen, whether or not the study keeps it. */
export interface Look {
  readonly screen: string;
  readonly analysis: StudyAnalysis;
  /** The answer in one sentence, as it was seen. */
  readonly answer: string;
}

const MOST_LOOKS = 60;

/** The same question again takes the place of the look before; the newest comes first. */
export function withLook(looks: readonly Look[], look: Look): readonly Look[] {
  const key = questionKey(look.analysis);
  const [newest] = looks;
  if (newest !== undefined && newest.answer === look.answer && questionKey(newest.analysis) === key)
    return looks;
  return [look, ...looks.filter(({ analysis }) => questionKey(analysis) !== key)].slice(0, MOST_LOOKS);
}

/** Looks that the study does not ask, whatever it calls them. */
export function notKept(looks: readonly Look[], analyses: readonly StudyAnalysis[]): readonly Look[] {
  const kept = new Set(analyses.map(questionKey));
  return looks.filter(({ analysis }) => !kept.has(questionKey(analysis)));
}

/** What is asked, without its name, title and note; the order of the options does not matter. */
export function questionKey({ id: _id, title: _title, note: _note, ...asked }: StudyAnalysis): string {
  return JSON.stringify(sorted(asked));
}

function sorted(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, part]) => part !== undefined);
  return entries.sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, part]) => [key, sorted(part)]);
}

/** A finding of its own in the study: the question under an id that is free, with a title and a note. */
export function findingOf(
  { analysis }: Look,
  analyses: readonly StudyAnalysis[],
  { title, note }: { readonly title: string; readonly note: string },
): StudyAnalysis {
  const taken = new Set(analyses.map(({ id }) => id));
  let id = analysis.id;
  for (let count = 2; taken.has(id); count++) id = `${analysis.id}-${count}`;
  const { title: _title, note: _note, ...asked } = analysis;
  return {
    ...asked,
    id,
    kind: analysis.kind,
    ...(title.trim() === '' ? {} : { title: title.trim() }),
    ...(note.trim() === '' ? {} : { note: note.trim() }),
  };
}
