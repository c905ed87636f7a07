import type { ClaimsFound, JudgedFigure, Unchecked } from '../analyses/claims/found.ts';
import { briefPrint } from '../analyses/claims/place-words.ts';
import { claimsWords } from '../analyses/claims/words.ts';
import { printTurn } from '../analyses/phrasing.ts';
import type { Terminal } from './terminal.ts';
import { tame, textTable, wrap } from './text-table.ts';

/**
 * A table of all figures with their verdicts, then the working of those that do not simply agree, the gravest
 * first; those that could not be checked only by what they lack.
 */
export function printClaims(terminal: Terminal, found: ClaimsFound): void {
  const { colour } = terminal;
  const { answer, unless } = claimsWords(found);
  terminal.out(
    textTable(
      [
        { head: 'id', align: 'left' },
        { head: 'place', align: 'left' },
        { head: 'quantity', align: 'left' },
        { head: 'printed', align: 'left' },
        { head: 'verdict', align: 'left' },
      ],
      found.judged.map(({ figure, says }) => [
        figure.id,
        figure.place,
        figure.quantity,
        briefPrint(figure),
        says,
      ]),
      terminal.width,
    ),
  );
  // What a program printed of one test is no table of columns.
  for (const table of found.tables.filter(({ columns }) => columns.some(({ role }) => role !== '')))
    terminal.out(
      `\n${line(
        `${table.name} was read as: ${table.columns.map(({ head, role }) => `${head} = ${role}`).join('; ')}.${
          table.ofData.length === 0 ? '' : ` Of the data: ${table.ofData.join(', ')}.`
        }`,
        terminal,
      )}\n`,
    );
  for (const grave of ['cannot be', 'differs', 'agrees only if rounded'] as const)
    for (const one of found.judged.filter(({ verdict }) => verdict === grave)) printOne(terminal, one);
  printUnchecked(terminal, found.unchecked);
  terminal.out(`\n${line(answer, terminal)}\n`);
  for (const turn of unless) terminal.out(`${colour.yellow(line(`Unless: ${printTurn(turn)}`, terminal))}\n`);
}

function printOne(
  terminal: Terminal,
  { figure, verdict, says, why, explained, resolve }: JudgedFigure,
): void {
  const { colour } = terminal;
  const head = tame(`${figure.id}  ${figure.quantity} "${briefPrint(figure)}": ${says}`);
  terminal.out(`\n${verdict === 'cannot be' ? colour.red(head) : colour.bold(head)}\n`);
  terminal.out(`${line(why, terminal)}\n`);
  if (explained !== '') terminal.out(`${line(`Would be explained by ${explained}.`, terminal)}\n`);
  if (resolve !== '') terminal.out(`${line(`To settle it: ${resolve}`, terminal)}\n`);
}

function printUnchecked(terminal: Terminal, groups: readonly Unchecked[]): void {
  if (groups.length === 0) return;
  terminal.out(`\n${terminal.colour.bold('Cannot be checked')}\n`);
  for (const { resolve, entries } of groups)
    terminal.out(
      `${line(`${entries.map(({ figure }) => figure.id).join(', ')}: ${resolve.charAt(0).toLowerCase()}${resolve.slice(1)}`, terminal)}\n`,
    );
}

function line(text: string, terminal: Terminal): string {
  return wrap(tame(text), Math.min(terminal.width, 100)).join('\n');
}
