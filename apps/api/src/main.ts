import { hideDriverNotice, InvalidConfig, parseConfig } from '@deckround/platform';
import { startService } from './start-service.js';

hideDriverNotice();
try {
  const service = await startService(parseConfig(process.env));
  let stopping = false;
  const stop = async () => {
    if (stopping) return;
    stopping = true;
    await service.stop();
    process.exit(0);
  };
  process.on('SIGTERM', () => void stop());
  process.on('SIGINT', () => void stop());
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(error instanceof InvalidConfig ? 2 : 1);
}
