import type { Section } from '../model/message.ts';

export const cautions = {} satisfies Section;
