import { send } from './api.js';

/** Fetches a file of the service, as whoever is signed in, and hands it to the device under the name it came with. */
export async function saveFile(path: string): Promise<void> {
  const response = await send('GET', path);
  const name = /filename="([^"]+)"/.exec(response.headers.get('content-disposition') ?? '')?.[1] ?? 'deckround';
  const address = URL.createObjectURL(await response.blob());
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The device has taken it over by then.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
