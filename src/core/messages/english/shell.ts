import type { Section } from '../model/message.ts';

export const shell = {} satisfies Section;
