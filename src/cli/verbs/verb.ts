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
  const text = JSON.stringify(value, infinityAsText, 2);
  // What JSON leaves as it is may still steer a terminal; written as an escape it says the same.
  const steering = /[\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g;
  const escaped = (sign: string) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  terminal.out(`${text.replace(steering, escaped)}\n`);
}

function infinityAsText(_key: string, value: unknown): unknown {
  return typeof value === 'number' && !Number.isFinite(value) ? String(value) : value;
}
