import type { ComponentProps } from 'react';

/** A named region that scrolls; it can be reached by key, or else what lies beyond its edge could not. */
export function ScrollRegion({ name, ...rest }: ComponentProps<'section'> & { readonly name: string }) {
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by key
  return <section tabIndex={0} aria-label={name} {...rest} />;
}
