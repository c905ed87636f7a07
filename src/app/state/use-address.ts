import { useEffect, useRef } from 'react';
import type { Opening } from '../openings.ts';
import { type Address, addressOf, readAddress, withAsks } from './address.ts';
import { commit, type History, startHistory } from './history.ts';
import { EMPTY_WORKSPACE, type Workspace } from './workspace.ts';

/** Names of the screens, for addresses. */
const SCREEN_IDS = [
  'sources',
  'assemblages',
  'contrasts',
  'kinship',
  'type-rules',
  'placement',
  'printed-figures',
  'take-away',
];

/** The session as it was kept, with the questions of the address that was opened. */
export function startOf({ session }: Opening): History<Workspace> {
  const history = session?.history ?? startHistory(EMPTY_WORKSPACE);
  const asked = withAsks(history.present.value, readAddress(location.hash, SCREEN_IDS)?.asks ?? []);
  if (history.present.value.study.sources.length === 0) return history;
  return commit(history, asked, 'the question of the address');
}

export function screenOf({ session }: Opening): string {
  const named = readAddress(location.hash, SCREEN_IDS)?.screen;
  if (named !== undefined) return named;
  // Printed figures without any data: there is nothing to see on Sources.
  const study = session?.history.present.value.study;
  return study !== undefined && study.sources.length === 0 && study.analyses.length > 0
    ? 'printed-figures'
    : 'sources';
}

/** Keeps the location bar and the screen together, both ways: what is shown has an address, and Back goes there. */
export function useAddress(
  screen: string,
  workspace: Workspace,
  setScreen: (screen: string) => void,
  setHistory: (update: (history: History<Workspace>) => History<Workspace>) => void,
): void {
  const address = addressOf(screen, workspace.study.analyses);
  // The first address is where one came in, and one that Back led to is there already: no steps of their own.
  const arrived = useRef(true);
  useEffect(() => {
    const isArrival = arrived.current;
    arrived.current = false;
    if (location.hash === address) return;
    if (isArrival) history.replaceState(null, '', address);
    else history.pushState(null, '', address);
  }, [address]);
  useEffect(() => {
    const onMove = () => {
      const to: Address | null = readAddress(location.hash, SCREEN_IDS);
      if (to === null) return;
      arrived.current = true;
      setScreen(to.screen);
      setHistory((before) => {
        const asked = withAsks(before.present.value, to.asks);
        return commit(before, asked, 'the question of the address');
      });
    };
    addEventListener('popstate', onMove);
    return () => removeEventListener('popstate', onMove);
  }, [setScreen, setHistory]);
}
