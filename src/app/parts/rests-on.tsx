import type { Counts } from '../../analyses/contract.ts';
import { printBehind } from '../../analyses/phrasing.ts';
import { useWorkbench } from '../state/workbench.tsx';
import { count } from './numbers.ts';

/** How many records an answer rests on, and what was set aside and why; nothing before the first answer. */
export function RestsOn({ n, note = '' }: { readonly n: Counts | undefined; readonly note?: string }) {
  const { view } = useWorkbench();
  if (n === undefined || view === null) return null;
  const aside = n.setAside.map(
    ({ reason, fragments }) => ` Set aside: ${count(fragments, 'fragment')}, ${reason}.`,
  );
  return (
    <p className="small">
      Rests on {printBehind(n, view.witness)}
      {note}.{aside}
    </p>
  );
}
