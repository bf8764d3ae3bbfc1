import type { Section } from '../model/message.ts';

export const plan = {} satisfies Section;
