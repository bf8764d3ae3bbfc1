import { createSignal } from 'solid-js';
import type { GateView, Request } from '../../../../core/run/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { WordsField } from '../../../parts/words-field.tsx';

/** Past a question that is not DANGER, with a reason that the record keeps. */
export function GoPast(props: {
  gate: GateView;
  send: (request: Request) => void;
  onClose: () => void;
}) {
  const [reason, setReason] = createSignal('');
  const goOn = () => {
    props.send({
      kind: 'override-gate',
      gate: props.gate.gate.id,
      scopeKey: props.gate.scopeKey,
      reason: reason().trim(),
    });
    props.onClose();
  };
  return (
    <Sheet label={t('run.gate.go-past.title')} onClose={props.onClose}>
      <h2>{say(props.gate.gate.ask)}</h2>
      <WordsField
        label={t('run.gate.go-past.why')}
        name="reason"
        words={reason()}
        onWords={setReason}
      />
      <div class="button-row">
        <Action
          class="button button--ember"
          name="override-gate"
          disabled={reason().trim() === ''}
          onPress={goOn}
        >
          {t('run.gate.go-past.press')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
    </Sheet>
  );
}
