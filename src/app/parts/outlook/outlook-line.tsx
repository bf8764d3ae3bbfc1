import { createEffect, For, Show } from 'solid-js';
import { message } from '../../../core/messages/index.ts';
import type { Outlook, RunView } from '../../../core/run/index.ts';
import { say } from '../../context/language.ts';
import { wallZone } from '../../context/zone.ts';
import { createOutlook } from '../../controllers/outlook/outlook.ts';
import { planner } from '../../controllers/planner/planner.ts';

/** When the open run ends by what really happened and, in the Plan, what decides that. Expected, never a guard. */
export function OutlookLine(props: {
  view: RunView | undefined;
  nowMs: number;
  tellsWhy?: boolean;
}) {
  const { outlook, look } = createOutlook(planner.ask);
  createEffect(() => look(props.view, props.nowMs));
  // In the Plan the clock on the wall is that of the tablet; the run's is its kitchen's.
  const zone = () => props.view?.plan.kitchen.place?.zone ?? wallZone();
  const told = ({ endMs, aheadS, about, decided }: Outlook) => [
    message('advice.outlook', { wallMs: endMs, zone: zone(), aheadS, about }),
    ...(props.tellsWhy && decided.length > 0
      ? [message('advice.decided', { links: decided })]
      : []),
  ];
  return (
    <Show when={outlook()}>
      {(now) => (
        <div class="outlook" data-outlook={now().about ? 'about' : 'planned'}>
          <For each={told(now())}>{(one) => <p>{say(one)}</p>}</For>
        </div>
      )}
    </Show>
  );
}
