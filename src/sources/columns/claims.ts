import type { Bound } from './bound-headers.ts';
import type { ColumnPlan } from './column-plan.ts';

/** Attribute ids that a plan feeds. */
export function attributesOf(plan: Pick<ColumnPlan, 'attribute' | 'split'>): string[] {
  if (plan.split !== undefined) {
    return plan.split.into.flatMap(({ attribute }) => (attribute === null ? [] : [attribute]));
  }
  return plan.attribute === undefined ? [] : [plan.attribute.id];
}

export interface Claims {
  readonly add: (plan: ColumnPlan) => void;
  /** Header of the column that holds what the plan wants. */
  readonly holder: (plan: ColumnPlan) => string | undefined;
  readonly held: (id: string) => boolean;
}

/** One column an attribute; low and high of one attribute may come from two. */
export function openClaims(): Claims {
  const held = new Map<string, string>();
  const key = (id: string, bound: Bound | undefined): string => (bound === undefined ? id : `${id} ${bound}`);
  return {
    held: (id) => held.has(id),
    add: (plan) => {
      for (const id of attributesOf(plan)) held.set(key(id, plan.bound), plan.header);
    },
    holder: (plan) => {
      for (const id of attributesOf(plan)) {
        const bounds = plan.bound === undefined ? (['low', 'high'] as const) : [plan.bound];
        const found =
          held.get(id) ?? bounds.map((bound) => held.get(key(id, bound))).find((name) => name !== undefined);
        if (found !== undefined) return found;
      }
      return undefined;
    },
  };
}
