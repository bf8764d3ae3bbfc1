import type { Section } from '../model/message.ts';

export const problems = {} satisfies Section;
