import { Command } from 'commander';
import { z } from 'zod';
import { GLOSSARY } from '../../analyses/glossary.ts';
import { ANALYSES, type RegisteredAnalysis } from '../../analyses/register.ts';
import { type KindName, kindNames } from '../../attributes/naming/all-names.ts';
import { KIND_LANGUAGES } from '../../attributes/naming/languages.ts';
import { suggest } from '../../attributes/near-matches.ts';
import { defaultRegister } from '../../attributes/register.ts';
import { InputError } from '../../errors.ts';
import type { Terminal } from '../terminal.ts';
import { tame, wrap } from '../text-table.ts';
import { printJson, type Verb } from './verb.ts';

/** `thrum explain [KIND]`: what an analysis answers, what may be asked of it, what always holds; or what a word of answers means. */
export const explainVerb: Verb = (terminal) =>
  new Command('explain')
    .description(
      'explain a kind of analysis: its question, its options with their defaults, what always holds; or a word of answers',
    )
    .argument(
      '[what]',
      'kind of analysis, or a word of the glossary; all kinds are listed without it; "names": what kinds of fabric are called',
    )
    .option('--json', 'print the JSON Schema of its options')
    .action((kind: string | undefined, options: { readonly json?: true }) => {
      if (kind === undefined) {
        if (options.json)
          printJson(
            terminal,
            ANALYSES.map(({ kind: name, question }) => ({ kind: name, question })),
          );
        else
          for (const { kind: name, question } of ANALYSES) terminal.out(`${name.padEnd(12)} ${question}\n`);
        return;
      }
      if (kind === 'names') {
        const names = kindNames(defaultRegister());
        if (options.json) printJson(terminal, names);
        else printNames(terminal, names);
        return;
      }
      const analysis = ANALYSES.find((known) => known.kind === kind);
      if (analysis === undefined) {
        const word = GLOSSARY.flatMap(({ words }) => words).find((known) =>
          known.word.split(', ').some((name) => name.toLowerCase() === kind.toLowerCase()),
        );
        if (word !== undefined && !options.json) {
          terminal.out(`${terminal.colour.bold(word.word)}: ${word.meaning}\n`);
          return;
        }
        const kinds = ANALYSES.map((known) => known.kind);
        throw new InputError(
          `there is no analysis of kind "${kind}"`,
          {},
          suggest(kind, kinds, `use one of ${kinds.join(', ')}`),
        );
      }
      const schema = z.toJSONSchema(analysis.options, { io: 'input', unrepresentable: 'any' });
      if (options.json) printJson(terminal, schema);
      else printKind(terminal, analysis, schema as OptionsSchema);
    });

/** Structures and facets with their words, one language a line. */
function printNames({ out, colour, width }: Terminal, names: readonly KindName[]): void {
  for (const { what, value, words } of names) {
    out(`${colour.bold(value === '' ? what : `${what}: ${value}`)}\n`);
    const said = KIND_LANGUAGES.map((language) => `${language} ${words[language]}`).join('; ');
    for (const line of wrap(tame(said), Math.min(width, 100) - 4)) out(`    ${line}\n`);
  }
}

interface OptionSchema {
  readonly title?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly enum?: readonly unknown[];
  readonly type?: string;
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly exclusiveMaximum?: number;
}

interface OptionsSchema {
  readonly properties?: Readonly<Record<string, OptionSchema>>;
  readonly required?: readonly string[];
}

/** Pages of methods that are not called after their kind. */
const METHOD_PAGES: Readonly<Record<string, string>> = { claims: 'docs/printed-figures.md' };

function printKind(
  terminal: Terminal,
  { kind, question, always }: RegisteredAnalysis,
  schema: OptionsSchema,
): void {
  const { colour, width } = terminal;
  const indented = (text: string) =>
    wrap(tame(text), Math.min(width, 100) - 4)
      .map((line) => `    ${line}\n`)
      .join('');
  terminal.out(`${colour.bold(`${kind}: ${question}`)}\n\n`);
  for (const [name, option] of Object.entries(schema.properties ?? {})) {
    const standing = schema.required?.includes(name) ? 'must be given' : leftOut(option.default);
    terminal.out(
      `  ${colour.bold(name)}  ${option.title ?? ''} (${[...shapeOf(option), standing].join('; ')})\n`,
    );
    if (option.description !== undefined) terminal.out(indented(option.description.replace(/\.?$/, '.')));
    if (option.enum !== undefined) terminal.out(indented(`One of ${option.enum.map(String).join(', ')}.`));
  }
  if (always.length > 0) {
    terminal.out(`\n${colour.bold('What always holds')}\n`);
    for (const truth of always) terminal.out(indented(truth));
  }
  terminal.out(`\nMethod and sources: ${METHOD_PAGES[kind] ?? `docs/methods/${kind}.md`}\n`);
}

function leftOut(value: unknown): string {
  if (value === undefined) return 'may be left out';
  const empty = typeof value === 'object' && value !== null && Object.keys(value).length === 0;
  return `${empty ? 'none' : JSON.stringify(value)} if left out`;
}

/** "a list", "from 1 to 50", "above 0.5 and below 1": what a value has to be, as far as a word or two say it. */
function shapeOf({ type, minimum, exclusiveMinimum, maximum, exclusiveMaximum }: OptionSchema): string[] {
  if (type === 'array') return ['a list'];
  if (type === 'boolean') return ['true or false'];
  const bounds = [
    ...(minimum === undefined || minimum === Number.MIN_SAFE_INTEGER ? [] : [`from ${minimum}`]),
    ...(exclusiveMinimum === undefined ? [] : [`above ${exclusiveMinimum}`]),
    ...(exclusiveMaximum === undefined ? [] : [`and below ${exclusiveMaximum}`]),
    // The schema of a whole number without an end of its own names the least and the greatest that are exact.
    ...(maximum === undefined || maximum === Number.MAX_SAFE_INTEGER ? [] : [`to ${maximum}`]),
  ];
  return bounds.length === 0 ? [] : [bounds.join(' ')];
}
