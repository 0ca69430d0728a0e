import { Navigate, useRouterState } from '@tanstack/react-router';
import { useSession } from '../data/session.js';
import { useShop } from './shop-words.js';

/** Each role opens at the question of its day; an empty shop at its first steps. */
export function Landing() {
  const { session } = useSession();
  const shop = useShop();
  // Whoever pressed a link before the shop has answered goes where it leads, not to where the day would begin.
  const leaving = useRouterState({ select: (state) => state.location.pathname !== '/' });
  if (leaving) return null;
  if (session?.person.role === 'technician') return <Navigate to="/day" replace />;
  if (session?.person.role === 'supervisor') return <Navigate to="/grounds" replace />;
  if (shop === undefined) return null;
  const isEmpty = (shop.counts?.machines ?? 0) === 0 || (shop.counts?.technicians ?? 0) === 0;
  return isEmpty ? <Navigate to="/start" replace /> : <Navigate to="/week" replace />;
}
