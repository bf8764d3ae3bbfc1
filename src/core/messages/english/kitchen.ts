import type { Section } from '../model/message.ts';

export const kitchen = {} satisfies Section;
