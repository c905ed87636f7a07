import { number, percent } from '../second-bed/styles.ts';
import { sum } from '../second-bed/table-text.ts';
import type { Writer } from './hands.ts';
import type { Crossed, OpenSet } from './material.ts';
import { asText, kind, pCell } from './print.ts';
import type { Printed } from './sample-layouts.ts';

type Layout = (of: Crossed, set: OpenSet, hand: Writer) => Printed;

const whole = (one: number, hand: Writer) => number(one, hand, 0);
const share = (over: number, under: number, hand: Writer) => percent(over, under, hand);

export const COUNT_LAYOUTS: Readonly<Record<string, Layout>> = {
  'a heading with n (%) and its kinds below, a test behind': (t, set, hand) => {
    const sizes = t.columnTerms.map((_, c) => sum(t.cells.map((row) => row[c])));
    return {
      text: asText(
        [
          [
            'Characteristic',
            ...t.columnTerms.map((term, c) => `${term} (n=${whole(sizes[c], hand)})`),
            hand.pSymbol === 'P' ? 'P value' : 'p',
          ],
          [
            `${kind(set, t.rows)}, ${hand.words.countAndShare}`,
            ...t.columnTerms.map(() => ''),
            pCell(t.chi[2], hand),
          ],
          ...t.rowTerms.map((term, r) => [
            `  ${term}`,
            ...t.cells[r].map((one, c) => `${whole(one, hand)} (${share(one, sizes[c], hand)})`),
            '',
          ]),
        ],
        hand,
      ),
    };
  },
  'X, n (%) in each row': (t, _, hand) => {
    const sizes = t.columnTerms.map((_, c) => sum(t.cells.map((row) => row[c])));
    return {
      text: asText(
        [
          ['', ...t.columnTerms.map((term, c) => `${term} (N = ${whole(sizes[c], hand)})`)],
          ...t.rowTerms.map((term, r) => [
            `${term}, ${hand.words.countAndShare}`,
            ...t.cells[r].map((one, c) => `${whole(one, hand)} (${share(one, sizes[c], hand)})`),
          ]),
        ],
        hand,
      ),
    };
  },
  'X (%) in each row, n in the last': (t, _, hand) => {
    const sizes = t.columnTerms.map((_, c) => sum(t.cells.map((row) => row[c])));
    return {
      text: asText(
        [
          ['', ...t.columnTerms],
          ...t.rowTerms.map((term, r) => [
            `${term} (%)`,
            ...t.cells[r].map((one, c) => share(one, sizes[c], hand)),
          ]),
          [hand.words.n, ...sizes.map((size) => whole(size, hand))],
        ],
        hand,
      ),
    };
  },
  'counts over their base': (t, set, hand) => ({
    text: asText(
      [
        [kind(set, t.rows), ...t.columnTerms],
        ...t.rowTerms.map((term, r) => [
          term,
          ...t.cells[r].map(
            (one) =>
              `${whole(one, hand)}/${whole(sum(t.cells[r]), hand)} (${share(one, sum(t.cells[r]), hand)}${hand.percentSpace}%)`,
          ),
        ]),
      ],
      hand,
    ),
  }),
  'pairs of n and % under heads that span': (t, set, hand) => {
    const sizes = t.cells.map(sum);
    return {
      text: asText(
        [
          ['', ...t.columnTerms.flatMap((term) => [term, '']), hand.words.total],
          [kind(set, t.rows), ...t.columnTerms.flatMap(() => [hand.words.n, '%']), hand.words.n],
          ...t.rowTerms.map((term, r) => [
            term,
            ...t.cells[r].flatMap((one) => [whole(one, hand), share(one, sizes[r], hand)]),
            whole(sizes[r], hand),
          ]),
        ],
        hand,
      ),
    };
  },
  'the test in a note': (t, set, hand) => {
    const all = sum(t.cells.flat());
    const [chi, df, p] = t.chi;
    const said =
      p < 0.001
        ? `${hand.pSymbol} < ${number(0.001, { ...hand, cut: false } as never, 3, hand.bare)}`
        : `${hand.pSymbol} = ${number(p, hand, 3, hand.bare)}`;
    return {
      text: `Table 4. ${kind(set, t.rows)} by ${kind(set, t.columns).toLowerCase()}\n${asText(
        [
          [kind(set, t.rows), ...t.columnTerms, hand.words.total],
          ...t.rowTerms.map((term, r) => [
            term,
            ...t.cells[r].map((one) => whole(one, hand)),
            whole(sum(t.cells[r]), hand),
          ]),
          [
            hand.words.total,
            ...t.columnTerms.map((_, c) => whole(sum(t.cells.map((row) => row[c])), hand)),
            whole(all, hand),
          ],
        ],
        hand,
      )}Note. χ²(${df}${hand.mark === ',' ? '; ' : ', '}N = ${whole(all, hand)}) = ${number(chi, hand)}${hand.part}${said}\n`,
    };
  },
  'turned, shares of the whole': (t, set, hand) => {
    const all = sum(t.cells.flat());
    return {
      text: `Tab. 2. ${kind(set, t.columns)} by ${kind(set, t.rows)} (% of ${whole(all, hand)})\n${asText(
        [
          [kind(set, t.columns), ...t.rowTerms],
          ...t.columnTerms.map((term, c) => [term, ...t.cells.map((row) => share(row[c], all, hand))]),
        ],
        hand,
      )}`,
    };
  },
};
