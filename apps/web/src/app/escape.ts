import { useEffect } from 'react';

/**
 * Escape closes what stands open around the focus and leads back to what opened it: the menu of a phone, or a form that
 * opens in place, where what was typed stays. Slips and dialogs see to it themselves.
 */
export function useEscape(closeMenu: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented || !(event.target instanceof Element)) return;
      const form = event.target.closest<HTMLDetailsElement>('main details[open]');
      if (form === null) return closeMenu();
      form.open = false;
      form.querySelector('summary')?.focus();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
}
