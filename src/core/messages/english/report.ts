import type { Section } from '../model/message.ts';

export const report = {} satisfies Section;
