import { say } from '../../../context/language.ts';
import { Index, Show } from 'solid-js';
import type { FaultPolicy } from '../../../../core/plan/index.ts';
import type { Request, StepView } from '../../../../core/run/index.ts';
import { Action } from '../../../parts/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { SignalWord } from '../../../parts/signal-word.tsx';

/** What follows when it is told, in words. */
const FOLLOWS: Readonly<Record<FaultPolicy['policy'], string>> = {
  'stop-run': 'Telling it stops the run and leads you through making everything safe.',
  suspend: 'Telling it halts the run until you say that it is put right.',
  note: 'Telling it writes it down; the run goes on.',
};

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
      <h2>{say(props.fault.name)}: do this first</h2>
      <Show when={shut()}>
        <p class="fault-first">
          <SignalWord word="DANGER" /> Keep the oven door shut: air feeds the fire.
        </p>
      </Show>
      <ol class="do-this">
        <Index each={props.fault.doThis}>{(line) => <li>{say(line())}</li>}</Index>
      </ol>
      <p class="quiet">{FOLLOWS[props.fault.policy]}</p>
      <div class="button-row">
        <Action class="button button--ember button--big" onPress={tell}>
          Tell it: {say(props.fault.name).toLowerCase()}
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          All is well
        </Action>
      </div>
    </Sheet>
  );
}
