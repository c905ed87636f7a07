import { printCount } from '../analyses/phrasing.ts';
import type { LikelyDuplicate } from '../sources/combine/duplicates.ts';
import type { Terminal } from './terminal.ts';
import { tame, wrap } from './text-table.ts';

/** Pairs that are shown before the rest is only counted. */
const MOST = 6;

/** Finds that may stand in the tables twice, and what the study is to say of them. */
export function printDuplicates(terminal: Terminal, duplicates: readonly LikelyDuplicate[]): void {
  if (duplicates.length === 0) return;
  const say = (text: string) =>
    terminal.out(`${wrap(tame(text), Math.min(terminal.width, 100)).join('\n')}\n`);
  terminal.out(
    `\n${terminal.colour.underline(`Perhaps one find twice: ${printCount(duplicates.length, 'pair')}`)}\n`,
  );
  for (const { names, sources, why } of duplicates.slice(0, MOST))
    say(
      sources[0] === sources[1]
        ? `  "${names[0]}" and "${names[1]}" of ${sources[0]}: ${why}`
        : `  "${names[0]}" of ${sources[0]} and "${names[1]}" of ${sources[1]}: ${why}`,
    );
  if (duplicates.length > MOST) say(`  and ${duplicates.length - MOST} more, in the ledger.`);
  const [{ names, sources }] = duplicates as [LikelyDuplicate];
  say('Both of each count until you decide. Under "duplicates" of the study, write for each pair:');
  const pair = {
    first: { source: sources[0], id: names[0] },
    second: { source: sources[1], id: names[1] },
    decision: 'first-only',
  };
  terminal.out(`  ${tame(JSON.stringify(pair))}\n`);
  say('or "second-only", "one-item" (fragments of one item) or "two-finds".');
}
