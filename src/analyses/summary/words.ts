import type { Answer } from '../contract.ts';
import { firstShort, printSmall } from '../phrasing.ts';
import type { SummaryFound } from './found.ts';
import { topicsOf } from './topic-words.ts';
import { summaryNext, summaryTurns } from './turn-words.ts';

/** What is commonest, smallest and largest, and what to mind when reading the tables. */
export function summaryWords(found: SummaryFound): Answer {
  const topics = topicsOf(found);
  const said = topics.map((topic) => topic.clause).filter((clause) => clause !== '');
  return {
    answer:
      said.length === 0
        ? firstShort([`cannot be told: no ${found.unit} has a value.`])
        : firstShort([
            ...said.map((_, left) => shortened(said, said.length - left)),
            ...topics.slice(0, 1).map(({ shorter }) => `${shorter}.`),
          ]),
    because: topics.flatMap(({ evidence }) => (evidence === '' ? [] : [evidence])).slice(0, 4),
    unless: summaryTurns(found),
    next: summaryNext(found),
  };
}

/** The first clauses, and how many attributes more there are. */
function shortened(clauses: readonly string[], kept: number): string {
  const left = clauses.length - kept;
  const rest = left === 0 ? [] : [`${printSmall(left)} more in the tables`];
  return `${[...clauses.slice(0, kept), ...rest].join('; ')}.`;
}
