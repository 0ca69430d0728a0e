export { catalogueInSpanish } from './catalogue-in-spanish.js';
export * from './catalogue-item.js';
export { MANUAL_FIRST } from './cautions.js';
export { CLASSES } from './classes.js';
export { PARTS } from './parts.js';
export { itemsOfClass, SERVICE_ITEMS } from './service-items.js';
export * from './symptoms.js';
