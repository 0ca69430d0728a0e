const UNREACHABLE = ['ECONNREFUSED', 'ECONNRESET', 'ENOTFOUND', 'EAI_AGAIN', 'ETIMEDOUT', 'EHOSTUNREACH'];

/** What to say of a failure that no command foresaw: where it comes from the database's address, what to do. */
export function plainWords(error: unknown): string {
  const { code, message } = (error ?? {}) as { code?: unknown; message?: string };
  // An address with several hosts behind it fails with a code and without a message.
  if (typeof code === 'string' && UNREACHABLE.includes(code))
    return `The database named by DATABASE_URL does not answer (${message || code}): start it or correct the address.`;
  if (code === '28P01' || code === '28000')
    return 'The database named by DATABASE_URL refuses the sign-in: correct its user and password.';
  if (code === '3D000')
    return `The database named by DATABASE_URL is not there (${message}): create it, or correct the name.`;
  return message || String(error);
}
