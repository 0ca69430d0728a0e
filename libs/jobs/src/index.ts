export * from './bullmq-jobs.js';
export * from './in-process-jobs.js';
export * from './job-names.js';
export * from './job-queue.js';
