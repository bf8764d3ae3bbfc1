export { startWorker, type WorkerEvents, type WorkerPort } from './worker.ts';
