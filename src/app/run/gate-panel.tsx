import type { GateView } from '../../core/run/index.ts';
import { SignalWord } from '../parts/signal-word.tsx';

/** One caution at a time, to be answered before the step can begin. */
export function GatePanel(props: { gate: GateView; left: number }) {
  return (
    <div class="gate-panel" role="group" aria-label="Before you begin">
      <div class="gate-head">
        <SignalWord word={props.gate.gate.signal} />
        <span class="quiet">
          Before you begin{props.left > 1 ? `: ${props.left} to answer` : ''}
        </span>
      </div>
      <p class="gate-ask">{props.gate.gate.ask}</p>
      <p class="gate-say">{props.gate.gate.say}</p>
    </div>
  );
}
