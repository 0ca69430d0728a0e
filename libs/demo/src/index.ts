export { createDemo, type Demo } from './create-demo.js';
export { DEMO_TODAY, DEMO_WEEK } from './invented-shop.js';
