import { ln } from '../../numerics/foundation/elementary.ts';
import type { Turn } from '../contract.ts';
import { inSentence, printList, printNumber, printQuantity } from '../phrasing.ts';
import type { AttributeContrast, MissingShift } from './found.ts';

/** What the missing of one group would have to be, of the group where the least would do. */
export function missingTurn({ samples, missingShifts, told }: AttributeContrast): Turn[] {
  if (missingShifts.length === 0) return [];
  const name = inSentence(samples.attribute.label);
  const far = (shift: number) => Math.abs(samples.logarithmic ? ln(shift) : shift);
  const turning = missingShifts
    .flatMap((one) => (one.shift === null ? [] : [{ ...one, shift: one.shift }]))
    .sort((a, b) => far(a.shift) - far(b.shift));
  const [least] = turning;
  if (least === undefined)
    return [
      {
        what: `had ${name} been recorded of all (missing: ${printList(missingShifts.map(({ label, missing }) => `${missing} of ${label}`))})`,
        size: `the groups would still be ${told}, whatever the missing of any one of them were`,
        overturns: false,
      },
    ];
  const { label, missing, shift, becomes } = least;
  const others = missingShifts.filter((one) => one.label !== label);
  return [
    {
      what: `were ${name} of the ${missing} of ${label} without it ${howFar(shift, samples)}`,
      size: `the groups would be ${becomes === told ? `${told} the other way round` : becomes}${others.length === 0 ? '' : `; ${others.map((one) => ofOther(one, samples)).join('; ')}`}`,
      overturns: false,
    },
  ];
}

function howFar(shift: number, { logarithmic, attribute }: AttributeContrast['samples']): string {
  if (shift === (logarithmic ? 1 : 0)) return 'like that of those recorded there';
  return logarithmic
    ? `about ${printNumber(shift, 2)} times that of those recorded there`
    : `about ${printQuantity(Math.abs(shift), attribute.unit ?? '', 2)} ${shift > 0 ? 'above' : 'below'} that of those recorded there`;
}

function ofOther({ label, missing, shift }: MissingShift, samples: AttributeContrast['samples']): string {
  return shift === null
    ? `whatever the ${missing} of ${label} were, it would stand`
    : `of the ${missing} of ${label} it would take ${howFar(shift, samples)}`;
}
