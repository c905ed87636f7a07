import { printList } from '../../analyses/phrasing.ts';
import type { Material } from '../prepare.ts';
import type { WhatIf } from './otherwise.ts';

/** What may be tried of some material; null where nothing of the kind is open in it. */
export type Try = (material: Material) => WhatIf | null;

/**
 * Everything that is open taken otherwise at once, one after the other: what turns no verdict by itself may turn it
 * together. Null where fewer than two things are open.
 */
export function jointly(prepared: Material, tries: readonly Try[]): WhatIf | null {
  const taken: WhatIf[] = [];
  let material = prepared;
  for (const attempt of tries) {
    const one = attempt(material);
    if (one === null) continue;
    taken.push(one);
    material = one.prepared();
  }
  if (taken.length < 2) return null;
  const open = printList(taken.map((one) => one.open));
  const last = material;
  return {
    what: `All at once: ${taken.map(({ what }) => startingSmall(what)).join('; ')}`,
    open,
    hangsOn: `Cannot be told yet: taken otherwise at once, ${open} turn the answer.`,
    next: taken.map(({ next }) => next).join(' '),
    prepared: () => last,
  };
}

const startingSmall = (text: string) => text.charAt(0).toLowerCase() + text.slice(1);
