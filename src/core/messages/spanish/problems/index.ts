import type { Section } from '../../model/message.ts';
import { backup } from './backup.ts';
import { checks } from './checks.ts';
import { fields } from './fields.ts';
import { files } from './files.ts';
import { filled } from './filled.ts';
import { text } from './text.ts';
import { warnings } from './warnings.ts';

/** What is wrong with a file, or was filled in for it. */
export const problems = {
  ...fields,
  ...text,
  ...checks,
  ...warnings,
  ...filled,
  ...files,
  ...backup,
} satisfies Section;
