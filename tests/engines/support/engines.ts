import type { Engine, MissingEngine } from './engine-page.ts';
import { chromium, firefox } from './puppeteered.ts';
import { webkit } from './webkit.ts';

/** The three engines that tablets have, as far as this machine has them. */
export const ENGINES: readonly (Engine | MissingEngine)[] = [chromium(), firefox(), webkit()];
