import type { Section } from '../model/message.ts';

export const engine = {} satisfies Section;
