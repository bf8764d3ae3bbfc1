import { createMemo, createUniqueId, For, Index, Show } from 'solid-js';
import type { FixturePhase, RunView } from '../../../../core/run/index.ts';
import { MS_PER_MINUTE } from '../../../../core/units/index.ts';
import { say, t } from '../../../context/language.ts';
import { afterPicture } from '../../../parts/after-picture.ts';
import { Action } from '../../../parts/press/action.tsx';
import { when } from '../../../parts/time/when.ts';
import { KitchenPlan } from '../../../pictures/kitchen-plan.tsx';
import { PhaseFigure, PhasePatterns } from '../../../pictures/phase-patterns.tsx';
import '../../../styles/run/kitchen-glance.css';
import { hotBurners } from '../step/progress.ts';
import { hotNow, nextWork, phasesById, phasesNow, restsNow } from './kitchen-now.ts';

type GlanceProps = {
  readonly view: RunView;
  readonly nowMs: number;
  /** The step that is shown beside it. */
  readonly current?: string | undefined;
  /** The next work is told here; else the step beside it tells it. */
  readonly tellsNext: boolean;
  /** Opens the kitchen with its names. */
  readonly onOpen?: () => void;
};

/** The kitchen at a glance: what is hot, what rests until when, what comes next. */
export function KitchenGlance(props: GlanceProps) {
  // Beside what is pressed: it follows a picture later.
  const now = afterPicture(() => ({ view: props.view, current: props.current }));
  const phases = createMemo(() => phasesById(now().view));
  const shown = () => now().view.steps.find(({ step }) => step.id === now().current)?.step;
  // By the minute: nothing of it names a second.
  const minuteMs = createMemo(() => Math.floor(props.nowMs / MS_PER_MINUTE) * MS_PER_MINUTE);
  const next = createMemo(() => nextWork(now().view, minuteMs(), now().current));
  const nextFixture = () => {
    const at = next()?.step.step.fixture;
    return at === shown()?.fixture ? undefined : at;
  };
  const picture = () => (
    <KitchenPlan
      kitchen={now().view.plan.kitchen}
      phases={phases()}
      lit={hotBurners(now().view)}
      selected={shown()?.fixture}
      next={nextFixture()}
      size="small"
    />
  );
  return (
    <div class="kitchen-glance">
      <Show when={props.onOpen} fallback={<div class="glance-picture">{picture()}</div>}>
        {(open) => (
          <Action
            class="glance-picture"
            name="kitchen"
            label={t('run.glance.open')}
            onPress={() => open()()}
          >
            {picture()}
          </Action>
        )}
      </Show>
      <Legend
        phases={phasesNow(now().view)}
        here={shown()?.fixture !== undefined}
        next={nextFixture() !== undefined}
      />
      <KitchenLines
        view={now().view}
        nowMs={minuteMs()}
        current={now().current}
        tellsNext={props.tellsNext}
      />
    </div>
  );
}

/** What can burn, what must rest, and what comes next, in words. */
export function KitchenLines(props: Omit<GlanceProps, 'onOpen'>) {
  const hot = createMemo(() => hotNow(props.view));
  const next = createMemo(
    () => props.tellsNext && nextWork(props.view, props.nowMs, props.current),
  );
  return (
    <ul class="glance-lines">
      <li classList={{ 'glance-hot': hot().length > 0 }}>
        {hot().length > 0 ? t('run.glance.hot', { names: hot() }) : t('run.glance.nothing-hot')}
      </li>
      <Index each={restsNow(props.view, props.nowMs)}>{(line) => <li>{say(line())}</li>}</Index>
      <Show when={next()}>
        {(work) => (
          <li>
            {work().fromMs === undefined
              ? t('run.glance.next-now', { step: work().step.step.title })
              : t('run.glance.next', {
                  step: work().step.step.title,
                  from: when(work().fromMs ?? 0, props.nowMs),
                })}
          </li>
        )}
      </Show>
    </ul>
  );
}

/** Each pattern and figure that is in the picture, named once. */
export function Legend(props: { phases: readonly FixturePhase[]; here: boolean; next: boolean }) {
  const ids = createUniqueId();
  return (
    <ul class="legend" aria-hidden="true">
      <svg class="legend-patterns">
        <PhasePatterns prefix={ids} />
      </svg>
      <For each={props.phases}>
        {(phase) => (
          <li>
            <svg viewBox="-20 -20 40 40">
              <rect class="kp-shape" x="-19" y="-19" width="38" height="38" />
              <rect x="-19" y="-19" width="38" height="38" fill={`url(#${ids}-${phase})`} />
              <PhaseFigure phase={phase} size={28} />
            </svg>
            <Show when={phase !== 'untouched' && phase}>
              {(named) => <>{t(`common.fixture-phase.${named()}`)}</>}
            </Show>
          </li>
        )}
      </For>
      <Show when={props.here}>
        <li>
          <span class="legend-ring legend-ring--here" />
          {t('run.glance.here')}
        </li>
      </Show>
      <Show when={props.next}>
        <li>
          <span class="legend-ring" />
          {t('run.glance.then')}
        </li>
      </Show>
    </ul>
  );
}
