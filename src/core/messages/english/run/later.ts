import { amend } from './amend.ts';
import { dialogs } from './dialogs.ts';

/** What a run says after its first moment: in its sheets, and of changes of its plan. */
export const runLater = { ...dialogs, ...amend };
