import type { ReactNode } from 'react';
import { Button as AriaButton, Disclosure, DisclosurePanel, Heading } from 'react-aria-components';

/** Settings that are out of sight until they are asked for. */
export function Further({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <Disclosure>
      <Heading level={3} className="plain-head">
        <AriaButton slot="trigger" className="button plain small">
          {title}
        </AriaButton>
      </Heading>
      <DisclosurePanel>{children}</DisclosurePanel>
    </Disclosure>
  );
}
