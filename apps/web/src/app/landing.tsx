import { Navigate } from '@tanstack/react-router';
import { useSession } from '../data/session.js';

/** Each role opens at the question of its day. */
export function Landing() {
  const { session } = useSession();
  if (session?.person.role === 'technician') return <Navigate to="/day" replace />;
  if (session?.person.role === 'supervisor') return <Navigate to="/grounds" replace />;
  return <Navigate to="/week" replace />;
}
