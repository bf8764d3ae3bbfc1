import { say } from '../context/language.ts';
import type { CautionText } from '../../core/plan/index.ts';
import { SignalWord } from './signal-word.tsx';

/** One caution where the hand is: signal word, then one short sentence with its reason. */
export function CautionLine(props: { caution: Pick<CautionText, 'signal' | 'say'> }) {
  return (
    <li class="caution-line">
      <SignalWord word={props.caution.signal} />
      <span>{say(props.caution.say)}</span>
    </li>
  );
}
