import type { Section } from '../model/message.ts';

export const survey = {} satisfies Section;
