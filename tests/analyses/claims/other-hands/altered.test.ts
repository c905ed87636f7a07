import { describe, expect, it } from 'vitest';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { type Case, HANDS } from './print.ts';

const { cases, checked } = HANDS;

/** One digit altered in the first number of a right text, with the records open: seeded, one alteration a text. */
const FORMS = /^(?:apa|de|fr|es|da|ama|bio)\/(?:sample|two|several|cor|chi|count)/;

function altered(one: Case, at: number): Case {
  const [row] = one.rows;
  const printed = row?.printed ?? '';
  // The first number that is no subscript and no degree of freedom: behind a sign, or the first of the text.
  const match = /(?<=[=:]\s?[-−–]?)\d[\d.,]*\d/.exec(printed) ?? /\d[\d.,]*\d/.exec(printed);
  if (match === null) return one;
  const digits = [...match[0]].flatMap((sign, i) => (/\d/.test(sign) ? [i] : []));
  const random = createRandom(at);
  // The last digit may be a rounding of another kind; any other is altered.
  const place = digits[Math.floor(random.next() * Math.max(1, digits.length - 1))];
  const old = Number(match[0][place]);
  const digit = (old + 1 + Math.floor(random.next() * 8)) % 10;
  const text = `${match[0].slice(0, place)}${digit}${match[0].slice(place + 1)}`;
  return {
    ...one,
    rows: [
      {
        ...row,
        printed: printed.slice(0, match.index) + text + printed.slice(match.index + match[0].length),
      },
    ],
  };
}

describe('one digit altered in texts of seven hands, with the records open', () => {
  const tried = cases.flatMap((one, i) => {
    if (one.table !== null || !FORMS.test(`${one.hand}/${one.form}`)) return [];
    const wrong = altered(one, i + 1);
    const found = checked(wrong, true);
    if (found === null || wrong.rows[0]?.printed === one.rows[0]?.printed) return [];
    const against = found.judged.some(({ verdict }) => verdict === 'differs' || verdict === 'cannot be');
    return [{ against, text: `${one.set}: ${one.rows[0]?.printed} -> ${wrong.rows[0]?.printed}` }];
  });
  const missed = tried.filter(({ against }) => !against).map(({ text }) => text);

  it('finds 98 % of them', () => {
    expect(tried.length).toBeGreaterThan(200);
    expect(missed.length / tried.length, missed.join('\n')).toBeLessThan(0.02);
  });
});
