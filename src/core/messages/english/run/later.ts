import { refusals } from '../refusals.ts';
import { amend } from './amend.ts';
import { cooling } from './cooling.ts';
import { dialogs } from './dialogs.ts';
import { gaps } from './gaps.ts';

/** What a run says after its first moment: in its sheets, after gaps, for a burn, and of changes of its plan. */
export const runLater = { ...dialogs, ...cooling, ...gaps, ...amend, ...refusals };
