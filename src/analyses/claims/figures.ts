import type { Figure } from '../contract.ts';
import { printCount, printP } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { assignStyles, kindBar, kindStyle } from '../shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { type ClaimsFound, type LastDigits, VERDICTS } from './found.ts';
import { quantitySaid } from './reading/terms.ts';

/** Verdicts by quantity, and the last digits of each column of readings. */
export function claimsFigures(found: ClaimsFound): Readonly<Record<string, Figure>> {
  return {
    verdicts: verdictsFigure(found),
    ...Object.fromEntries(found.digits.map((digits, i) => [`digits${i + 1}`, digitsFigure(digits)])),
  };
}

function verdictsFigure({ judged }: ClaimsFound): Figure {
  const quantities = [...new Set(judged.map(({ figure }) => figure.quantity))];
  const names = quantities.map(quantitySaid);
  const styles = assignStyles(VERDICTS);
  const traces = VERDICTS.map((verdict) => ({
    type: 'bar',
    orientation: 'h',
    name: verdict,
    y: names,
    x: quantities.map(
      (quantity) =>
        judged.filter((one) => one.verdict === verdict && one.figure.quantity === quantity).length,
    ),
    marker: { ...kindBar(styles.get(verdict) ?? kindStyle(0)), line: { color: GROUND.ink, width: 0.5 } },
    hovertemplate: `%{y}: %{x} ${verdict}<extra></extra>`,
  }));
  return {
    data: traces,
    layout: figureLayout({
      x: axis('printed figures', { rangemode: 'tozero' }),
      y: axis('', { autorange: 'reversed', type: 'category' }),
      legend: 'verdict',
      height: 150 + 24 * quantities.length,
      more: { barmode: 'stack', bargap: 0.35 },
    }),
    caption: `Verdicts on ${printCount(judged.length, 'printed figure')}, by what they are.`,
  };
}

function digitsFigure({ set, attribute, n, digits, p }: LastDigits): Figure {
  return {
    data: [
      {
        type: 'bar',
        x: digits.map((_, digit) => String(digit)),
        y: digits,
        marker: kindBar(kindStyle(0)),
        hovertemplate: 'last digit %{x}: %{y}<extra></extra>',
      },
      {
        type: 'scatter',
        mode: 'lines',
        x: digits.map((_, digit) => String(digit)),
        y: digits.map(() => n / 10),
        line: { color: GROUND.ink, dash: 'dash', width: 1 },
        hoverinfo: 'skip',
      },
    ],
    layout: figureLayout({
      x: axis('last printed digit', { type: 'category' }),
      y: axis('readings', { rangemode: 'tozero' }),
      width: 'single',
      height: 260,
      more: { showlegend: false },
    }),
    caption:
      `Last printed digits of the ${n} readings of "${escapeText(set)}"${attribute === '' ? '' : ` (${escapeText(attribute)})`}; ` +
      `dashed: evenly spread; ${printP(p)} against that (chi-squared, 9 df).`,
  };
}
