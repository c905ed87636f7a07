import type { Counts } from '../../analyses/contract.ts';
import { count } from './numbers.ts';

/** How many records an answer rests on, and what was set aside and why; nothing before the first answer. */
export function RestsOn({ n, note = '' }: { readonly n: Counts | undefined; readonly note?: string }) {
  if (n === undefined) return null;
  const aside = n.setAside.map(
    ({ reason, fragments }) => ` Set aside: ${count(fragments, 'fragment')}, ${reason}.`,
  );
  return (
    <p className="small">
      Rests on {count(n.fragments, 'fragment')} of {count(n.items, 'item')}
      {note}.{aside}
    </p>
  );
}
