import type { ReactNode } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';

/** Lines of one sort that are listed; the others are counted. */
export const MOST = 40;

/** One sort of findings, folded away under its number; nothing where there is none. */
export function Sort({
  title,
  count: many,
  open,
  children,
}: {
  title: string;
  count: number;
  open?: boolean;
  children: ReactNode;
}) {
  if (many === 0) return null;
  return (
    <Disclosure defaultExpanded={open ?? false}>
      <Heading level={4} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          {title}: {many}
        </AriaButton>
      </Heading>
      <DisclosurePanel>
        <ul className="points small">{children}</ul>
      </DisclosurePanel>
    </Disclosure>
  );
}

/** How many more there are than are listed. */
export function More({ all }: { all: number }) {
  return all > MOST ? <li className="soft">and {all - MOST} more</li> : null;
}
