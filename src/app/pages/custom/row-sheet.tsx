import { createSignal } from 'solid-js';
import { ownCustomOf, withOwnRow, type CustomRow } from '../../../core/custom/index.ts';
import { message } from '../../../core/messages/index.ts';
import { methodsForRow, type Kitchen } from '../../../core/kitchen/index.ts';
import { say, t } from '../../context/language.ts';
import { Action } from '../../parts/press/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { MethodFields, SaidFields } from './way-fields.tsx';
import { dayOf, endsCovered, minutesOf, missingIn, type SaidWay } from './way.ts';
import { rowName, wayMessage } from './row-messages.ts';

function startingFrom(base: CustomRow, kitchen: Kitchen): SaidWay {
  const own = ownCustomOf(kitchen.household);
  const changed = own?.changedRows.find((one) => one.row === base.id);
  const minutes = (changed ?? base).minutes;
  return {
    method: (changed ?? base).method,
    minutes: minutes === undefined ? '' : String(minutes),
    cover: changed?.cover ?? base.cover,
    saidBy: changed?.saidBy ?? own?.changedRows.at(-1)?.saidBy ?? '',
    saidOn: changed?.saidOn ?? dayOf(new Date()),
    words: changed?.why ?? '',
  };
}

/** One row of the custom as this household has it. */
export function RowSheet(props: {
  kitchen: Kitchen;
  base: CustomRow;
  name: string;
  onKitchen: (kitchen: Kitchen) => void;
  onClose: () => void;
}) {
  const [way, setWay] = createSignal<SaidWay>(startingFrom(props.base, props.kitchen));
  const change = (part: Partial<SaidWay>) => setWay((was) => ({ ...was, ...part }));
  const missing = () => missingIn(way(), true);
  const keep = () => {
    const minutes = minutesOf(way());
    const { method, saidBy, saidOn, words } = way();
    const changed = {
      row: props.base.id,
      method,
      ...(minutes !== undefined && { minutes }),
      cover: endsCovered(way()),
      why: words.trim(),
      saidBy: saidBy.trim(),
      saidOn,
    };
    props.onKitchen(withOwnRow(props.kitchen, changed, props.name));
    props.onClose();
  };
  return (
    <Sheet
      label={t('kitchen.custom.change-row', { row: rowName(props.base) })}
      onClose={props.onClose}
    >
      <h2>{say(rowName(props.base))}</h2>
      <p class="quiet">
        {t('kitchen.custom.base-has', {
          way: wayMessage(props.base),
          reason: props.base.reason,
        })}
      </p>
      <MethodFields
        way={way()}
        methods={methodsForRow(props.kitchen.household.custom, props.base.id)}
        onChange={change}
      />
      <SaidFields way={way()} wordsLabel={t('kitchen.custom.way.why')} onChange={change} />
      <p class="quiet" role="status">
        {say(missing() ?? message('kitchen.custom.follows'))}
      </p>
      <div class="button-row">
        <Action class="button button--ember" disabled={missing() !== undefined} onPress={keep}>
          {t('kitchen.custom.keep-row')}
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          {t('kitchen.custom.back')}
        </Action>
      </div>
    </Sheet>
  );
}
