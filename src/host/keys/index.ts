export type { Intent } from './intent.ts';
export { listenKeys } from './listen-keys.ts';
