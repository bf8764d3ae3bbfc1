import type { Message } from '../../../core/messages/index.ts';
import type { Request, RunView, StepView } from '../../../core/run/index.ts';
import type { Persistence } from '../../../host/persist/index.ts';
import type { Theme } from '../../context/theme.ts';
import type { RunChoices } from '../../controllers/run/run-choices.ts';
import type { RunMemory } from '../../controllers/run/run-note.ts';
import type { Trouble } from '../../controllers/run/trouble.ts';
import type { LightStates } from './lights.tsx';

/** What the run page shows, and what can be done from it. */
export type RunPageProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly lights: LightStates;
  readonly trouble: Trouble | undefined;
  readonly refusal: Message | undefined;
  readonly theme: Theme;
  readonly onTheme: () => void;
  readonly choices: RunChoices;
  readonly onChoice: (name: keyof RunChoices, value: boolean) => void;
  /** A language by its tag. */
  readonly onLanguage: (tag: string) => void;
  /** Hands a request to the queue of the run. */
  readonly send: (request: Request) => void;
  readonly playTest: () => Promise<boolean>;
  /** What the browser says of keeping what is stored. */
  readonly kept: Persistence;
  readonly arm: () => void;
  readonly exportRun: () => void;
  /** Present: another page leads the run, and this one only shows it until it is called. */
  readonly lead: (() => void) | undefined;
  /** Absent: what is no fact of the run lives as long as the page. */
  readonly memory?: RunMemory | undefined;
  /** Step that somebody else than the person at the screen acts on next: it is shown. */
  readonly atStep?: string | undefined;
  /** What the address asks to be opened over the run. */
  readonly opens?: 'days' | undefined;
  /** The water of this pour gave out after a share of its stretch. */
  readonly ranOut: (step: StepView, share: number) => void;
};
