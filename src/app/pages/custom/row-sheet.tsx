import { createSignal } from 'solid-js';
import { ownCustomOf, withOwnRow, type CustomRow } from '../../../core/custom/index.ts';
import { methodsForRow, type Kitchen } from '../../../core/kitchen/index.ts';
import { Action } from '../../parts/action.tsx';
import { Sheet } from '../../parts/sheet.tsx';
import { METHOD_NAMES } from '../../labels/names.ts';
import { MethodFields, SaidFields } from './way-fields.tsx';
import { dayOf, endsCovered, minutesOf, missingIn, type SaidWay } from './way.ts';
import { rowName, wayWords } from './row-words.ts';

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
    <Sheet label={`Change the row: ${rowName(props.base)}`} onClose={props.onClose}>
      <h2>{rowName(props.base)}</h2>
      <p class="quiet">
        The custom has: {wayWords(props.base, METHOD_NAMES)}. {props.base.reason}
      </p>
      <MethodFields
        way={way()}
        methods={methodsForRow(props.kitchen.household.custom, props.base.id)}
        onChange={change}
      />
      <SaidFields way={way()} wordsLabel="Why" onChange={change} />
      <p class="quiet" role="status">
        {missing() ?? 'Every fixture this row is about follows it.'}
      </p>
      <div class="button-row">
        <Action class="button button--ember" disabled={missing() !== undefined} onPress={keep}>
          Keep the row
        </Action>
        <Action class="button button--plain" onPress={props.onClose}>
          Back
        </Action>
      </div>
    </Sheet>
  );
}
