import type { Section } from '../model/message.ts';

export const custom = {} satisfies Section;
