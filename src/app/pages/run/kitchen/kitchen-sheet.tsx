import { createMemo, For } from 'solid-js';
import type { RunView } from '../../../../core/run/index.ts';
import { t, written } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { inDrawOrder, KitchenPlan } from '../../../pictures/kitchen-plan.tsx';
import { BatchBoard } from './batch-board.tsx';
import { hotBurners } from '../step/progress.ts';
import { KitchenLines, Legend } from './kitchen-glance.tsx';
import { phasesById, phasesNow } from './kitchen-now.ts';

/** The kitchen with its names, as large as the screen. */
export function KitchenSheet(props: { view: RunView; nowMs: number; onClose: () => void }) {
  const named = createMemo(() => inDrawOrder(props.view.plan.kitchen.fixtures));
  const numbers = createMemo(() => Object.fromEntries(named().map(({ id }, i) => [id, i + 1])));
  const phases = createMemo(() => phasesById(props.view));
  const phaseOf = (id: string) => phases()[id] ?? 'untouched';
  return (
    <Sheet label={t('run.glance.open')} onClose={props.onClose} wide>
      <div class="kitchen-large">
        <KitchenPlan
          kitchen={props.view.plan.kitchen}
          phases={phases()}
          numbers={numbers()}
          lit={hotBurners(props.view)}
        />
        <div class="kitchen-large-words">
          <KitchenLines view={props.view} nowMs={props.nowMs} tellsNext />
          <BatchBoard view={props.view} />
          <ol class="kitchen-names">
            <For each={named()}>
              {({ id, name }) => <li data-phase={phaseOf(id)}>{written(name)}</li>}
            </For>
          </ol>
          <Legend phases={phasesNow(props.view)} here={false} next={false} />
        </div>
      </div>
      <div class="button-row">
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
    </Sheet>
  );
}
