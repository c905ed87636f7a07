import { questionKey } from './looks.ts';
import { type StudyAnalysis, type Workspace, withAnalysis } from './workspace.ts';

/** Where somebody is: a screen, and the questions of the study that it asks. */
export interface Address {
  readonly screen: string;
  readonly asks: readonly StudyAnalysis[];
}

/** Kinds of question that each screen puts; a screen without any is addressed by its name alone. */
const ASKED: Readonly<Record<string, readonly string[]>> = {
  assemblages: ['crosstab', 'similarity'],
  region: ['threadcount', 'map', 'chronology'],
  contrasts: ['contrast'],
  kinship: ['grouping', 'ordination'],
  placement: ['placement', 'standing'],
};

/** The address of a screen as it stands in the study, for the location bar: `#/contrasts?ask=[…]`. */
export function addressOf(screen: string, analyses: readonly StudyAnalysis[]): string {
  const asks = (ASKED[screen] ?? []).flatMap((kind) => analyses.find((one) => one.kind === kind) ?? []);
  const ask = asks.length === 0 ? '' : `?ask=${encodeURIComponent(JSON.stringify(asks))}`;
  return `#/${screen}${ask}`;
}

/** Reads the part of an address behind `#`; anything that is no address of ours is the first screen. */
export function readAddress(hash: string, screens: readonly string[]): Address | null {
  const [, screen = '', query = ''] = /^#\/([a-z-]+)(?:\?(.*))?$/s.exec(hash) ?? [];
  if (!screens.includes(screen)) return null;
  return { screen, asks: asksOf(screen, new URLSearchParams(query).get('ask')) };
}

function asksOf(screen: string, text: string | null): StudyAnalysis[] {
  if (text === null) return [];
  try {
    const asks: unknown = JSON.parse(text);
    return Array.isArray(asks) ? asks.filter((ask) => isAsk(ask, ASKED[screen] ?? [])) : [];
  } catch {
    return [];
  }
}

function isAsk(value: unknown, kinds: readonly string[]): value is StudyAnalysis {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return false;
  const { id, kind } = value as Record<string, unknown>;
  return typeof id === 'string' && /^[a-zA-Z][a-zA-Z0-9-]*$/.test(id) && kinds.includes(String(kind));
}

/** The study with the questions of an address; the same workspace where it asks them already. */
export function withAsks(workspace: Workspace, asks: readonly StudyAnalysis[]): Workspace {
  return asks.reduce((now, ask) => {
    const own = now.study.analyses.find(({ id }) => id === ask.id);
    return own !== undefined && own.kind === ask.kind && questionKey(own) === questionKey(ask)
      ? now
      : withAnalysis(now, ask);
  }, workspace);
}
