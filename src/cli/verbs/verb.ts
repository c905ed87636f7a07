import type { Command } from 'commander';
import type { Terminal } from '../terminal.ts';

/** A verb of the command line: given where to print and how to set the exit status, its commander command. */
export type Verb = (terminal: Terminal, setStatus: (status: number) => void) => Command;

/** Option of every verb that reads a study. */
export const ALLOW_OUTSIDE = [
  '--allow-outside',
  'read files that the study names outside its own folder',
] as const;

/** An answer for machines: JSON with a line end. */
export function printJson(terminal: Terminal, value: unknown): void {
  terminal.out(`${JSON.stringify(value, infinityAsText, 2)}\n`);
}

function infinityAsText(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
}
