import type { Section } from '../model/message.ts';

/** Words that every place shares. */
export const common = {
  'common.as-written': ({ text }: { text: string }) => text,
} satisfies Section;
