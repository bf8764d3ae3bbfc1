import { cleaning } from '../steps/cleaning.ts';
import { cooling } from './cooling.ts';
import { days } from './sheets/days.ts';
import { damagedJournal } from './sheets/journal.ts';
import { dialogs } from './sheets/dialogs.ts';
import { faultLines } from '../cautions/fault-lines.ts';
import { gaps } from './gaps.ts';
import { notDrawn } from '../steps/not-drawn.ts';
import { refusals } from './refusals.ts';
import { retiredSteps } from '../steps/retired.ts';
import { voice } from './voice.ts';

/** What a run says after its first moment: in its sheets, after gaps, for a burn, aloud, and where the engine refuses. */
export const runLater = {
  ...dialogs,
  ...days,
  ...cleaning,
  ...cooling,
  ...faultLines,
  ...gaps,
  ...notDrawn,
  ...refusals,
  ...retiredSteps,
  ...voice,
  ...damagedJournal,
};
