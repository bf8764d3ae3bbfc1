import { Index, Show } from 'solid-js';
import type { FaultPolicy } from '../../../../core/plan/index.ts';
import type { Request, StepView } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';

/** One thing that goes wrong: first what to do with the hands, then telling it. */
export function FaultSheet(props: {
  fault: FaultPolicy;
  step: StepView | undefined;
  send: (request: Request) => void;
  onClose: () => void;
}) {
  const oven = () =>
    props.step?.step.kind === 'self-clean' || props.step?.step.picture?.kind === 'oven';
  const shut = () => oven() && (props.fault.kind === 'smoke' || props.fault.kind === 'fire');
  const tell = () => {
    props.send({
      kind: 'report-fault',
      fault: props.fault.kind,
      ...(props.step ? { step: props.step.step.id } : {}),
    });
    props.onClose();
  };
  return (
    <Sheet label={say(props.fault.name)} onClose={props.onClose}>
      <h2>{t('run.fault.first', { fault: props.fault.name })}</h2>
      <Show when={shut()}>
        <p class="fault-first">
          <SignalWord word="DANGER" /> {t('run.fault.oven-shut')}
        </p>
      </Show>
      <ol class="do-this">
        <Index each={props.fault.doThis}>{(line) => <li>{say(line())}</li>}</Index>
      </ol>
      <p class="quiet">{t(`run.fault.policy.${props.fault.policy}`)}</p>
      <div class="button-row">
        <Action class="button button--ember button--big" name="report-fault" onPress={tell}>
          {t('run.fault.tell', { fault: props.fault.name })}
        </Action>
        <Action class="button button--plain" name="all-well" onPress={props.onClose}>
          {t('run.fault.well')}
        </Action>
      </div>
    </Sheet>
  );
}
