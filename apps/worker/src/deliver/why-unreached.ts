/** What Node calls it, and what it means to whoever looks after the connection. */
const MEANINGS: readonly (readonly [codes: RegExp, meaning: string])[] = [
  [/^(ECONNREFUSED)$/, 'Nothing answers at this address.'],
  [/^(ENOTFOUND|EAI_AGAIN)$/, 'The name in this address is not known.'],
  [/^(ECONNRESET|EPIPE|ECONNABORTED|ECONNECTION)$/, 'The connection broke off.'],
  [/^(EHOSTUNREACH|ENETUNREACH)$/, 'No way leads to this address.'],
  [/^(ETIMEDOUT|ABORT_ERR)$/, 'It did not answer in time.'],
  [/CERT|SIGNATURE|ERR_TLS|EPROTO|ERR_SSL/, 'Its certificate or its encryption is not to be trusted.'],
];

/** Why a request to another system came to nothing, as a sentence; what has no name of its own as it was reported. */
export function whyUnreached(error: unknown): string {
  // By its code, not its class: an aborted request fails with an error of Node's own.
  const { name, code, syscall, message } = error as Partial<NodeJS.ErrnoException>;
  if (name === 'TimeoutError') return 'It did not answer in time.';
  // The mail library puts a code of its own over the system's, which the message still tells: "connect ECONNREFUSED …".
  const told = syscall === undefined ? [code] : [code, message?.split(' ')[1]];
  const meaning = MEANINGS.find(([codes]) => told.some((each) => typeof each === 'string' && codes.test(each)));
  return meaning?.[1] ?? message ?? String(error);
}
