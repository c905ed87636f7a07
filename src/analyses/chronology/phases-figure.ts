import type { Figure } from '../contract.ts';
import { inSentence, printCount, printYear } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { BAR_TEXT, kindBar, MOST_KINDS } from '../shared/figure/kinds.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { ChronologyFound, Phase } from './found.ts';

/** Shares of the kinds in each phase, the earliest above; null where there are fewer than two phases. */
export function phasesFigure(found: ChronologyFound): Figure | null {
  const { phases, kinds, phasesLabel, kindsLabel, unit } = found;
  if (phases.length < 2 || kinds.length === 0) return null;
  const total = (phase: Phase) => phase.counts.reduce((sum, count) => sum + count, 0);
  const names = phases.map((phase) =>
    escapeText(`${phase.label}, ${printYear(phase.from)} to ${printYear(phase.to)} (${total(phase)})`),
  );
  const marked = kinds.map(({ label, mark }, at) => ({ label, mark, at }));
  const own = marked
    .filter(({ mark }) => mark !== null && mark < MOST_KINDS)
    .sort((a, b) => (a.mark ?? 0) - (b.mark ?? 0));
  const rest = marked.filter(({ mark }) => mark === null || mark >= MOST_KINDS);
  const trace = (label: string, places: readonly number[], mark: number | null) => {
    const counts = phases.map((phase) => places.reduce((sum, at) => sum + phase.counts[at], 0));
    return {
      type: 'bar',
      orientation: 'h',
      name: escapeText(label),
      x: counts.map((count, at) => (total(phases[at]) === 0 ? 0 : (100 * count) / total(phases[at]))),
      y: names,
      text: counts.map((count) => (count === 0 ? '' : String(count))),
      ...BAR_TEXT,
      marker: { ...kindBar(markStyle(mark)), line: { color: GROUND.ink, width: 0.5 } },
      hovertemplate: `${escapeText(label)}: %{text} (%{x:.0f} %)<extra>%{y}</extra>`,
    };
  };
  const overlapping = phases.filter(({ order }) => order === 'overlaps').length;
  return {
    data: [
      ...own.map(({ label, at, mark }) => trace(label, [at], mark)),
      ...(rest.length === 0
        ? []
        : [
            trace(
              rest.length === 1 ? rest[0].label : `${rest.length} other kinds`,
              rest.map(({ at }) => at),
              null,
            ),
          ]),
    ],
    layout: figureLayout({
      x: axis(`share of ${unit}s (%)`, { range: [0, 100] }),
      y: axis(phasesLabel, { autorange: 'reversed', type: 'category' }),
      legend: kindsLabel,
      height: 150 + 34 * phases.length,
      more: { barmode: 'stack', bargap: 0.35 },
    }),
    caption:
      `${kindsLabel} by ${inSentence(phasesLabel)} in the order of time, the earliest above: shares of the ${unit}s dated, numbers in the bars and in brackets are counts. ` +
      (overlapping === 0
        ? `No two that follow each other share years.`
        : `The order of ${printCount(overlapping, inSentence(phasesLabel))} cannot be told, since their years overlap with those before.`),
  };
}
