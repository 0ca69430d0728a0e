/**
 * Hides one notice that no user can act on: the database driver's word on how Prisma shares a connection inside a
 * transaction. Every other warning of Node is printed as before.
 */
export function hideDriverNotice(): void {
  const printers = process.listeners('warning');
  process.removeAllListeners('warning');
  process.on('warning', (warning) => {
    if (
      warning.name === 'DeprecationWarning' &&
      warning.message.startsWith('Calling client.query() when the client is already')
    )
      return;
    for (const print of printers) print.call(process, warning);
  });
}
