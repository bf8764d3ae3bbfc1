export { createBounceGuard, intentOf, type Intent, type KeyPress } from './intent.ts';
export { listenKeys } from './listen-keys.ts';
