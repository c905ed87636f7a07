import type { Command } from 'commander';
import type { Terminal } from '../terminal.ts';

/** A verb of the command line: given where to print and how to set the exit status, its commander command. */
export type Verb = (terminal: Terminal, setStatus: (status: number) => void) => Command;

/** An answer for machines: JSON with a line end. */
export function printJson(terminal: Terminal, value: unknown): void {
  terminal.out(`${JSON.stringify(value, infinityAsText, 2)}\n`);
}

function infinityAsText(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
}
