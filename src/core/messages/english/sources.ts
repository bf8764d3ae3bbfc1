import type { Section } from '../model/message.ts';

export const sources = {} satisfies Section;
