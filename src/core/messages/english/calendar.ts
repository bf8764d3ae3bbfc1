import type { Section } from '../model/message.ts';

export const calendar = {} satisfies Section;
