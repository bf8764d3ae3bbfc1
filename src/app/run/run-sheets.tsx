import { Match, Switch } from 'solid-js';
import type { Request, RunView, StepView } from '../../core/run/index.ts';
import { RanOut } from './ran-out.tsx';
import { SomethingHappened } from './something-happened.tsx';
import { StepsSheet } from './steps-sheet.tsx';

/** Which sheet is open, and about which step. */
export type OpenSheet = { readonly kind: 'happened' | 'steps' | 'ran-out'; readonly step?: string };

/** What lies over the run while a person answers, looks up, or tells something. */
export function RunSheets(props: {
  view: RunView;
  open: OpenSheet | undefined;
  send: (request: Request) => void;
  ranOut: (step: StepView, share: number) => void;
  onChoose: (stepId: string) => void;
  onClose: () => void;
}) {
  const step = () => props.view.steps.find((one) => one.step.id === props.open?.step);
  return (
    <Switch>
      <Match when={props.open?.kind === 'happened'}>
        <SomethingHappened
          view={props.view}
          step={step()}
          send={props.send}
          onClose={props.onClose}
        />
      </Match>
      <Match when={props.open?.kind === 'ran-out' && step()}>
        {(of) => (
          <RanOut
            step={of()}
            onRanOut={(share) => {
              props.ranOut(of(), share);
              props.onClose();
            }}
            onClose={props.onClose}
          />
        )}
      </Match>
      <Match when={props.open?.kind === 'steps'}>
        <StepsSheet
          view={props.view}
          onChoose={(id) => {
            props.onChoose(id);
            props.onClose();
          }}
          onClose={props.onClose}
        />
      </Match>
    </Switch>
  );
}
