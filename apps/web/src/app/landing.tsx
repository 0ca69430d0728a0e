import { Navigate } from '@tanstack/react-router';
import { useSession } from '../data/session.js';
import { useShop } from './shop-words.js';

/** Each role opens at the question of its day; an empty shop at its first steps. */
export function Landing() {
  const { session } = useSession();
  const shop = useShop();
  if (session?.person.role === 'technician') return <Navigate to="/day" replace />;
  if (session?.person.role === 'supervisor') return <Navigate to="/grounds" replace />;
  if (shop === undefined) return null;
  const isEmpty = (shop.counts?.machines ?? 0) === 0 || (shop.counts?.technicians ?? 0) === 0;
  return isEmpty ? <Navigate to="/start" replace /> : <Navigate to="/week" replace />;
}
