import type { AttributeDefinition, Vocabulary } from '../attributes/definition.ts';
import { matchTerm } from '../attributes/matching.ts';
import { takeDoubt } from './certainty.ts';
import type { CellContext } from './context.ts';
import { emptyTerm, notUnderstood, quote } from './notes.ts';
import { readNothing } from './nothing.ts';
import type { TermReading } from './reading.ts';
import { doubtNotes, termReading, translated, translatedReading } from './terms.ts';
import { foldCell, plainSigns } from './text.ts';
import { gradeInWords } from './wording/grade-words.ts';

const RATHER =
  /^(?:rather|fairly|quite|eher|ziemlich|recht|plutôt|assez|piuttosto|abbastanza|más bien|bastante|snarest|ret|temmelig) (?=\p{L})/iu;

/** Reads a grade. Numbers standing for grades are questioned, since scales run either way. */
export function readGrade(text: string, attribute: AttributeDefinition, context: CellContext): TermReading {
  const levels = attribute.levels ?? [];
  const settled = translated(text, context);
  if (settled !== undefined && levels.includes(settled)) {
    return translatedReading(text, settled);
  }
  const whole = gradeOf(text, levels, context.vocabulary);
  if (whole !== null) return termReading(whole, 0, []);
  const nothing = readNothing(text);
  if (nothing !== null) return emptyTerm(nothing.state, nothing.notes);
  // "Eher locker", "plutôt serré": of a grade it says "rather", and is no doubt of what was seen.
  const doubt = takeDoubt(plainSigns(text).replace(RATHER, ''));
  const level =
    gradeOf(doubt.rest, levels, context.vocabulary) ?? gradeInWords(doubt.rest, context.vocabulary?.id ?? '');
  if (level !== null) return termReading(level, doubt.steps, doubtNotes(doubt.marks));
  const parts = doubt.rest.split(/\s*[-/]\s*|\s+(?:to|bis|a|à|til|or|oder|ou|o|eller)\s+/u);
  const grades = parts.map((part) => gradeOf(part, levels, context.vocabulary));
  const why =
    parts.length > 1 && grades.every((grade) => grade !== null)
      ? `${quote(text)} names several grades (${grades.join(', ')}); a cell holds one`
      : `${quote(text)} is none of the grades ${levels.join(', ')}`;
  return emptyTerm('not-observed', [
    notUnderstood(parts.length > 1 ? 'several-grades' : 'unknown-grade', why),
  ]);
}

function gradeOf(text: string, levels: readonly string[], vocabulary: Vocabulary | undefined): string | null {
  const folded = gradeKey(text);
  const own = levels.find((level) => gradeKey(level) === folded);
  if (own !== undefined || vocabulary === undefined || folded === '' || /[?()[\]]/u.test(text))
    return own ?? null;
  const match = matchTerm(text, vocabulary);
  if (match.kind !== 'exact') return null;
  const label = vocabulary.terms.find(({ id }) => id === match.id)?.label ?? match.id;
  return (
    levels.find(
      (level) =>
        level === match.id || gradeKey(level) === gradeKey(match.id) || gradeKey(level) === gradeKey(label),
    ) ?? null
  );
}

const gradeKey = (text: string): string => foldCell(text).replace(/[\s-]+/gu, '');
