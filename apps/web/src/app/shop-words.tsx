import { useQuery } from '@tanstack/react-query';
import { type ReactNode, useEffect } from 'react';
import { keptShop, shopAtHand } from '../data/kept-shop.js';
import { shopQuery } from '../data/queries.js';
import { useSession } from '../data/session.js';
import type { Shop } from '../data/types.js';
import { WordsProvider } from '../words/words.js';

/** Words, money and clock of the shop that is signed in; of the device's own clock before that. */
export function ShopWords({ children }: { readonly children: ReactNode }) {
  const { session } = useSession();
  const { data: answered } = useQuery({ ...shopQuery, enabled: session !== null });
  useEffect(() => {
    if (answered) keptShop.write(answered);
  }, [answered]);
  // Until the shop has answered, or without a network, its clock and money are those it had last.
  const data = answered ?? shopAtHand() ?? undefined;
  const zone = data?.timeZone ?? Intl.DateTimeFormat().resolvedOptions().timeZone;
  return (
    <WordsProvider timeZone={zone} currency={data?.currency ?? 'USD'} units={data?.units ?? 'us'}>
      {children}
    </WordsProvider>
  );
}

/** The shop, where a screen cannot be without it. */
export function useShop(): Shop | undefined {
  return useQuery(shopQuery).data;
}
