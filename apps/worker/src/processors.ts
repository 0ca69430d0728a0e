import type { Processors } from '@deckround/jobs';
import type { WorkerContext } from './context.js';
import { deliverProcessor } from './deliver/deliver.processor.js';
import { forecastProcessor } from './forecast/forecast.processor.js';
import { livesProcessor } from './lives/lives.processor.js';
import { notifyProcessor } from './notices/notify.processor.js';
import { planProcessor } from './plan/plan.processor.js';
import { hearProcessor } from './telematics/hear.processor.js';

/** Every kind of background work; the same ones run in process and under BullMQ. */
export function createProcessors(context: WorkerContext): Processors {
  return {
    forecast: forecastProcessor(context),
    plan: planProcessor(context),
    lives: livesProcessor(context),
    deliver: deliverProcessor(context),
    notify: notifyProcessor(context),
    hear: hearProcessor(context),
  };
}
