import type { Figure } from '../../../analyses/contract.ts';
import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import { escapeText } from '../../../analyses/shared/figure/style.ts';

type Trace = Readonly<Record<string, unknown>>;
/** The records of each mark, bar or line; one each, or several where it stands for a cluster. */
type Members = readonly (readonly string[])[];
type About = (id: string) => readonly string[];

/**
 * A figure of the engine with what is picked brought out, and with what each record is said where the pointer
 * rests: marks and bars know their records by `customdata`, a heat map those of its lines by `meta`.
 */
export function brushed(figure: Figure, picked: readonly string[], about: About): Figure {
  const chosen = new Set(picked);
  const traces = figure.data as readonly Trace[];
  const shapes = traces.flatMap((trace) => {
    const lines = linesOf(trace);
    return lines === null ? [] : pickedLines(trace, lines, chosen);
  });
  const before = (figure.layout.shapes as readonly object[] | undefined) ?? [];
  return {
    ...figure,
    data: traces.map((trace) => {
      const lines = linesOf(trace);
      if (lines !== null) return withPairs(trace, lines, about);
      const marks = membersOf(trace.customdata);
      return marks === null ? trace : withMarks(trace, marks, chosen, about);
    }),
    layout: { ...figure.layout, dragmode: 'select', shapes: [...before, ...shapes] },
  };
}

function linesOf(trace: Trace): Members | null {
  return trace.type === 'heatmap' ? membersOf(trace.meta) : null;
}

function membersOf(value: unknown): Members | null {
  if (!Array.isArray(value)) return null;
  const lists = value.map((one: unknown) => (Array.isArray(one) ? one : [one]));
  return lists.flat().every((one) => typeof one === 'string') ? lists : null;
}

/** One record in full; several by the first and their number. */
function said(members: readonly string[], about: About, most = 8): string[] {
  const [first = ''] = members;
  const head = `<b>${escapeText(first)}</b>${members.length > 1 ? ` and ${members.length - 1} more` : ''}`;
  return [head, ...about(first).slice(0, most).map(escapeText)];
}

function withMarks(trace: Trace, marks: Members, chosen: ReadonlySet<string>, about: About): Trace {
  const hover = {
    hovertext: marks.map((members) => said(members, about).join('<br>')),
    hovertemplate: String(trace.hovertemplate ?? '%{text}').replace('%{text}', '%{hovertext}'),
  };
  if (chosen.size === 0) return { ...trace, ...hover };
  return {
    ...trace,
    ...hover,
    selectedpoints: marks.flatMap((members, at) => (members.some((id) => chosen.has(id)) ? [at] : [])),
    selected: { marker: { opacity: 1 } },
    unselected: { marker: { opacity: 0.35 } },
  };
}

/** What the records of both lines of a cell are; a cell is picked as both. */
function withPairs(trace: Trace, lines: Members, about: About): Trace {
  const texts = lines.map((members) => said(members, about, 3).join(', '));
  return {
    ...trace,
    customdata: lines.map((a) => lines.map((b) => (a === b ? a : [...a, ...b]))),
    text: texts.map((a) => texts.map((b) => (a === b ? a : `${a}<br>${b}`))),
    hovertemplate: '%{text}<br>dissimilarity %{z:.3f}<extra></extra>',
  };
}

/** A frame around the line and the column of each picked record. */
function pickedLines(trace: Trace, lines: Members, chosen: ReadonlySet<string>): object[] {
  const frame = {
    type: 'rect',
    xref: trace.xaxis ?? 'x',
    yref: trace.yaxis ?? 'y',
    line: { color: GROUND.ink, width: 1.2 },
  };
  const [low, high] = [-0.5, lines.length - 0.5];
  return lines.flatMap((members, at) =>
    members.some((id) => chosen.has(id))
      ? [
          { ...frame, x0: low, x1: high, y0: at - 0.5, y1: at + 0.5 },
          { ...frame, x0: at - 0.5, x1: at + 0.5, y0: low, y1: high },
        ]
      : [],
  );
}
