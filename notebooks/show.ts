/**
 * Showing things in a notebook. Deno's kernel hands what a cell shows to a queue and may say that the cell
 * is done before the queue is empty; Jupyter then drops the rest. So each of these is awaited, and waits a
 * moment for the queue. `console.log` and a cell's own value can be lost.
 */
interface Jupyter {
  broadcast(kind: 'stream', content: { readonly name: 'stdout'; readonly text: string }): Promise<void>;
  display(content: Readonly<Record<string, unknown>>, options: { readonly raw: true }): Promise<void>;
}
declare const Deno: { readonly jupyter: Jupyter };

const MOMENT = 100;

async function sent(message: Promise<void>): Promise<void> {
  await message;
  await new Promise((resolve) => setTimeout(resolve, MOMENT));
}

/** Lines of text below the cell. */
export function say(...lines: readonly string[]): Promise<void> {
  return sent(Deno.jupyter.broadcast('stream', { name: 'stdout', text: `${lines.join('\n')}\n` }));
}

/** A plotly figure, in the form that Jupyter's front ends draw. */
export function figure(data: readonly unknown[], layout: object): Promise<void> {
  return sent(Deno.jupyter.display({ 'application/vnd.plotly.v1+json': { data, layout } }, { raw: true }));
}

/** A table, one row a record; the columns are the keys of the first. */
export function table(rows: readonly Readonly<Record<string, unknown>>[]): Promise<void> {
  const names = Object.keys(rows[0] ?? {});
  const line = (cells: readonly unknown[]) =>
    `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`;
  const text = [
    line(names),
    line(names.map(() => '---')),
    ...rows.map((row) => line(names.map((name) => row[name]))),
  ];
  return sent(Deno.jupyter.display({ 'text/markdown': text.join('\n') }, { raw: true }));
}

/** What every analysis answers. */
interface Answered {
  readonly answer: string;
  readonly because: readonly string[];
  readonly unless: readonly { readonly what: string; readonly size: string }[];
  readonly next?: readonly string[];
}

/** An answer as lines: the verdict, its evidence, what would change it, what would settle it. */
export function answerLines({ answer, because, unless, next = [] }: Answered): readonly string[] {
  return [
    answer,
    ...because.map((reason) => `  · ${reason}`),
    ...unless.map(({ what, size }) => `  ! ${what}${size === '' ? '' : `: ${size}`}`),
    ...next.map((step) => `  > ${step}`),
  ];
}
