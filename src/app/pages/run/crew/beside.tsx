import { Show } from 'solid-js';
import type { Request, RunView } from '../../../../core/run/index.ts';
import type { RunMemory } from '../../../controllers/run/run-note.ts';
import { KeptTicks } from '../step/lists/kept-ticks.ts';
import { Crew } from './crew.tsx';

/** What comes right after the step in hand: who does what beside it, and what was ticked before a reload. */
export function Beside(props: {
  view: RunView;
  current: string | undefined;
  memory: RunMemory | undefined;
  send: (request: Request) => void;
  onChoose: (stepId: string) => void;
  onSign: (sign: (request: Request) => Request) => void;
}) {
  const isAtWork = () => props.view.status === 'running' || props.view.status === 'held';
  return (
    <>
      <KeptTicks memory={props.memory} />
      <Show when={isAtWork() && props.view.plan.kitchen.household.people > 1}>
        <Crew {...props} />
      </Show>
    </>
  );
}
