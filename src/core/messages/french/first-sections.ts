import { calendar } from './calendar.ts';
import { cautions } from './cautions/index.ts';
import { common } from './common.ts';
import { engine } from './engine.ts';
import { run } from './run/index.ts';
import { shell } from './shell/shell.ts';
import { steps } from './steps/index.ts';

/** What an open run says, in one piece: it comes with the page. */
export const firstSections = {
  ...common,
  ...shell,
  ...run,
  ...engine,
  ...steps,
  ...cautions,
  ...calendar,
};
