import { createMemo, createSignal, For, Show, Suspense, type JSX } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Course, Plan } from '../../../core/plan/index.ts';
import { lazyPage, t } from '../../context/language.ts';
import type { PlanPictures } from '../../controllers/kitchen/plan-of.ts';
import type { Ticks } from '../../controllers/kitchen/ticks.ts';
import { Later } from '../../parts/later.tsx';
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

/** One press a part. */
function PartsNav(props: {
  part: Part;
  onPart: (part: Part) => void;
  ref: (element: HTMLElement) => void;
}) {
  return (
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
  );
}

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
  /** A part that nobody looks at is drawn after what is looked at. */
  const InTurn = (part: { id: Part; children: JSX.Element }) => (
    <Later of={props.plan} now={props.part === part.id}>
      {part.children}
    </Later>
  );
  /** Once looked at they stay, with what was worked out for them. */
  const handoutsOpened = createMemo<boolean>((was) => was || props.part === 'handouts', false);
  return (
    <>
      <PartsNav {...props} />
      <div class="plan-parts">
        <section
          classList={{ 'part--off': props.part !== 'steps' }}
          aria-label={t('plan-page.part.steps')}
          data-print="wall"
        >
          <h2 class="visually-hidden">{t('plan-page.part.steps')}</h2>
          <InTurn id="steps">
            <Steps plan={props.plan} course={props.course} clock={props.clock} />
          </InTurn>
        </section>
        <section
          classList={{ 'part--off': props.part !== 'methods' }}
          aria-label={t('plan-page.part.methods')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.methods')}</h2>
          <InTurn id="methods">
            <Methods plan={props.plan} kitchen={props.kitchen} onKitchen={props.onKitchen} />
          </InTurn>
        </section>
        <section
          classList={{ 'part--off': props.part !== 'pours' }}
          aria-label={t('plan-page.part.pours')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.pours')}</h2>
          <InTurn id="pours">
            <KitchenPlan kitchen={props.plan.kitchen} selected={picked()} onSelect={setPicked} />
            <Pours pours={props.pictures.pours} moves={props.pictures.pourMoves} />
            <RestsOnLink />
          </InTurn>
        </section>
        <section
          classList={{ 'part--off': props.part !== 'heat' }}
          aria-label={t('plan-page.part.heat')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.heat')}</h2>
          <InTurn id="heat">
            <p class="quiet">{t('plan-page.heat.about')}</p>
            <RestsOnLink />
            <div class="curves">
              <For each={props.pictures.heat}>{(picture) => <Curve picture={picture} />}</For>
            </div>
          </InTurn>
        </section>
        <section
          classList={{ 'part--off': props.part !== 'ask' }}
          aria-label={t('plan-page.part.ask')}
        >
          <InTurn id="ask">
            <Questions
              plan={props.plan}
              kitchen={props.kitchen}
              onKitchen={props.onKitchen}
              changes={props.pictures.changes}
            />
          </InTurn>
        </section>
        <section
          classList={{ 'part--off': props.part !== 'lists' }}
          aria-label={t('plan-page.part.lists')}
        >
          <InTurn id="lists">
            <Action class="button button--plain" onPress={() => window.print()}>
              {t('plan-page.print.all')}
            </Action>
            <Shopping plan={props.plan} />
            <Cleaning plan={props.plan} />
          </InTurn>
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
