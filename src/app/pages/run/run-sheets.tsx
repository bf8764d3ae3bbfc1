import { Match, Switch } from 'solid-js';
import type { FaultKind } from '../../../core/plan/index.ts';
import { t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import '../../styles/run/run-sheets.css';
import { FaultSheet } from './dialogs/fault-sheet.tsx';
import { RanOut } from './dialogs/ran-out.tsx';
import { SettingsSheet } from './dialogs/settings-sheet.tsx';
import { SomethingHappened } from './dialogs/something-happened.tsx';
import { StepsSheet } from './dialogs/steps-sheet.tsx';
import { KitchenSheet } from './kitchen/kitchen-sheet.tsx';
import type { RunPageProps } from './run-page-props.ts';
import { DaysView } from './timers/days-view.tsx';
import { TimerSheet } from './timers/timer-sheet.tsx';
import type { VoiceState } from './voice/voice.ts';

/** Which sheet is open, and about which step, timer or fault. */
export type OpenSheet = {
  readonly kind:
    'happened' | 'steps' | 'ran-out' | 'days' | 'settings' | 'timer' | 'fault' | 'kitchen';
  readonly step?: string | undefined;
  readonly timer?: string;
  readonly fault?: FaultKind;
};

export type RunSheetsProps = RunPageProps & {
  readonly open: OpenSheet;
  readonly voice: VoiceState;
  readonly onSayAgain: () => void;
  readonly onChoose: (stepId: string) => void;
  readonly onClose: () => void;
};

/** What lies over the run while a person answers, looks up, or tells something. */
export function RunSheets(props: RunSheetsProps) {
  const step = () => props.view.steps.find((one) => one.step.id === props.open.step);
  const timer = () => props.view.timers.find((one) => one.id === props.open.timer);
  const fault = () => props.view.plan.faults.find((one) => one.kind === props.open.fault);
  return (
    <Switch>
      <Match when={props.open.kind === 'happened'}>
        <SomethingHappened
          view={props.view}
          nowMs={props.nowMs}
          step={step()}
          send={props.send}
          onClose={props.onClose}
        />
      </Match>
      <Match when={props.open.kind === 'ran-out' && step()}>
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
      <Match when={props.open.kind === 'steps'}>
        <StepsSheet
          view={props.view}
          onChoose={(id) => {
            props.onChoose(id);
            props.onClose();
          }}
          onClose={props.onClose}
        />
      </Match>
      <Match when={props.open.kind === 'days'}>
        <Sheet label={t('run.until-when')} onClose={props.onClose}>
          <DaysView view={props.view} nowMs={props.nowMs} />
          <div class="button-row">
            <Action class="button button--plain" name="back" onPress={props.onClose}>
              {t('run.back')}
            </Action>
          </div>
        </Sheet>
      </Match>
      <Match when={props.open.kind === 'kitchen'}>
        <KitchenSheet view={props.view} nowMs={props.nowMs} onClose={props.onClose} />
      </Match>
      <Match when={props.open.kind === 'settings'}>
        <SettingsSheet {...props} />
      </Match>
      <Match when={props.open.kind === 'timer' && timer()}>
        {(of) => <TimerSheet {...props} timer={of()} />}
      </Match>
      <Match when={props.open.kind === 'fault' && fault()}>
        {(of) => <FaultSheet {...props} fault={of()} step={step()} />}
      </Match>
    </Switch>
  );
}
