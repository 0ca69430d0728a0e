import type { ReactNode } from 'react';

/** A table that may be wider than the page: it scrolls in itself, by keyboard too. */
export function Scrolling({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className="wide" tabIndex={0} aria-label={label}>
      {children}
    </section>
  );
}
