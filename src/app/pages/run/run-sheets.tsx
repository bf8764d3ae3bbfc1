import { Match, Switch } from 'solid-js';
import type { FaultKind } from '../../../core/plan/index.ts';
import type { Request, RunView, StepView } from '../../../core/run/index.ts';
import { Action } from '../../parts/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import type { RunChoices } from './choices.ts';
import '../../styles/run/run-sheets.css';
import { TimerSheet } from './timers/timer-sheet.tsx';
import { DaysView } from './timers/days-view.tsx';
import { FaultSheet } from './dialogs/fault-sheet.tsx';
import { RanOut } from './dialogs/ran-out.tsx';
import { SettingsSheet } from './dialogs/settings-sheet.tsx';
import { SomethingHappened } from './dialogs/something-happened.tsx';
import { StepsSheet } from './step/steps-sheet.tsx';
import type { VoiceState } from './voice/voice.ts';

/** Which sheet is open, and about which step, clock or fault. */
export type OpenSheet = {
  readonly kind: 'happened' | 'steps' | 'ran-out' | 'days' | 'settings' | 'clock' | 'fault';
  readonly step?: string | undefined;
  readonly timer?: string;
  readonly fault?: FaultKind;
};

export type RunSheetsProps = {
  readonly view: RunView;
  readonly nowMs: number;
  readonly open: OpenSheet | undefined;
  readonly choices: RunChoices;
  readonly onChoice: (name: keyof RunChoices, value: boolean) => void;
  readonly voice: VoiceState;
  readonly onSayAgain: () => void;
  readonly send: (request: Request) => void;
  readonly ranOut: (step: StepView, share: number) => void;
  readonly onChoose: (stepId: string) => void;
  readonly onClose: () => void;
};

/** What lies over the run while a person answers, looks up, or tells something. */
export function RunSheets(props: RunSheetsProps) {
  const step = () => props.view.steps.find((one) => one.step.id === props.open?.step);
  const clock = () => props.view.timers.find((one) => one.id === props.open?.timer);
  const fault = () => props.view.plan.faults.find((one) => one.kind === props.open?.fault);
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
      <Match when={props.open?.kind === 'days'}>
        <Sheet label="Until when" onClose={props.onClose}>
          <DaysView view={props.view} nowMs={props.nowMs} />
          <div class="button-row">
            <Action class="button button--plain" onPress={props.onClose}>
              Back
            </Action>
          </div>
        </Sheet>
      </Match>
      <Match when={props.open?.kind === 'settings'}>
        <SettingsSheet {...props} />
      </Match>
      <Match when={props.open?.kind === 'clock' && clock()}>
        {(of) => <TimerSheet {...props} clock={of()} />}
      </Match>
      <Match when={props.open?.kind === 'fault' && fault()}>
        {(of) => <FaultSheet {...props} fault={of()} step={step()} />}
      </Match>
    </Switch>
  );
}
