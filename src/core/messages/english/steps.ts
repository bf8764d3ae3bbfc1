import type { Section } from '../model/message.ts';

export const steps = {} satisfies Section;
