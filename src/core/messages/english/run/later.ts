import { amend } from './amend.ts';
import { dialogs } from './dialogs.ts';
import { ends } from './ends.ts';

/** What a run says beside its steps: in its sheets, of changes of its plan, before it begins, on a rest day, and once it is closed. */
export const runLater = { ...dialogs, ...amend, ...ends };
