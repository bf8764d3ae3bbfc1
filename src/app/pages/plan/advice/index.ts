/** What is worked out beside a plan: its own chunk, asked for when the plan stands. */
export { SurenessLine } from './sureness.tsx';
export { WhatHelps, type SaidChange } from './what-helps.tsx';
