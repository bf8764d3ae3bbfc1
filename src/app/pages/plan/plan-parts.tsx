import { createMemo, createSignal, For, Show, Suspense } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Course, Plan } from '../../../core/plan/index.ts';
import { lazyPage, t } from '../../context/language.ts';
import type { PlanPictures } from '../../controllers/kitchen/plan-of.ts';
import type { Ticks } from '../../controllers/kitchen/ticks.ts';
import { Action } from '../../parts/press/action.tsx';
import type { WallClock } from '../../pictures/course/frame.ts';
import { Curve } from '../../pictures/curve.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import { Cleaning } from './cleaning.tsx';
import { Methods } from './methods.tsx';
import { Pours } from './pours.tsx';
import { Questions } from './questions.tsx';
import { RestsOnLink } from './rests-on.tsx';
import { Shopping } from './shopping.tsx';
import { Steps } from './steps/steps.tsx';

const Handouts = lazyPage(
  ['handouts', 'utensils', 'covers', 'run-later'],
  async () => (await import('./handouts/index.ts')).Handouts,
);

const PARTS = ['steps', 'methods', 'pours', 'heat', 'ask', 'lists', 'handouts'] as const;
export type Part = (typeof PARTS)[number];

/** What lies under the course: one part at a time on the screen, all of them on paper. */
export function PlanParts(props: {
  plan: Plan;
  pictures: PlanPictures;
  kitchen: Kitchen;
  onKitchen: ((kitchen: Kitchen) => void) | undefined;
  ticks: Ticks | undefined;
  course: Course;
  clock: WallClock;
  part: Part;
  onPart: (part: Part) => void;
  ref: (element: HTMLElement) => void;
}) {
  const [picked, setPicked] = createSignal<string>();
  /** Once looked at they stay, with what was worked out for them. */
  const handoutsOpened = createMemo<boolean>((was) => was || props.part === 'handouts', false);
  return (
    <>
      <nav class="parts" ref={(element) => props.ref(element)} aria-label={t('plan-page.parts')}>
        <For each={PARTS}>
          {(id) => (
            <button
              type="button"
              data-part={id}
              aria-pressed={props.part === id}
              onClick={() => props.onPart(id)}
            >
              {t(`plan-page.part.${id}`)}
            </button>
          )}
        </For>
      </nav>
      <div class="plan-parts">
        <section
          classList={{ 'part--off': props.part !== 'steps' }}
          aria-label={t('plan-page.part.steps')}
          data-print="wall"
        >
          <h2 class="visually-hidden">{t('plan-page.part.steps')}</h2>
          <Steps plan={props.plan} course={props.course} clock={props.clock} />
        </section>
        <section
          classList={{ 'part--off': props.part !== 'methods' }}
          aria-label={t('plan-page.part.methods')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.methods')}</h2>
          <Methods plan={props.plan} kitchen={props.kitchen} onKitchen={props.onKitchen} />
        </section>
        <section
          classList={{ 'part--off': props.part !== 'pours' }}
          aria-label={t('plan-page.part.pours')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.pours')}</h2>
          <KitchenPlan kitchen={props.plan.kitchen} selected={picked()} onSelect={setPicked} />
          <Pours pours={props.pictures.pours} moves={props.pictures.pourMoves} />
          <RestsOnLink />
        </section>
        <section
          classList={{ 'part--off': props.part !== 'heat' }}
          aria-label={t('plan-page.part.heat')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.heat')}</h2>
          <p class="quiet">{t('plan-page.heat.about')}</p>
          <RestsOnLink />
          <div class="curves">
            <For each={props.pictures.heat}>{(picture) => <Curve picture={picture} />}</For>
          </div>
        </section>
        <section
          classList={{ 'part--off': props.part !== 'ask' }}
          aria-label={t('plan-page.part.ask')}
        >
          <Questions
            plan={props.plan}
            kitchen={props.kitchen}
            onKitchen={props.onKitchen}
            changes={props.pictures.changes}
          />
        </section>
        <section
          classList={{ 'part--off': props.part !== 'lists' }}
          aria-label={t('plan-page.part.lists')}
        >
          <Action class="button button--plain" onPress={() => window.print()}>
            {t('plan-page.print.all')}
          </Action>
          <Shopping plan={props.plan} />
          <Cleaning plan={props.plan} />
        </section>
        <section
          class="part--handouts"
          classList={{ 'part--off': props.part !== 'handouts' }}
          aria-label={t('plan-page.part.handouts')}
        >
          <Show when={handoutsOpened()}>
            <Suspense>
              <Handouts
                plan={props.plan}
                course={props.course}
                clock={props.clock}
                kitchen={props.kitchen}
                onKitchen={props.onKitchen}
                changes={props.pictures.changes}
                ticks={props.ticks}
              />
            </Suspense>
          </Show>
        </section>
      </div>
    </>
  );
}
