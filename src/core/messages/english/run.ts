import type { Section } from '../model/message.ts';

export const run = {} satisfies Section;
