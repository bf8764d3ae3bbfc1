import { lazyPage, t } from '../../context/language.ts';
import '../../styles/kitchen/custom.css';
import '../../styles/plan/plan-days.css';
import { createSignal, For, Show, Suspense } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import type { PlanPictures } from '../../controllers/kitchen/kitchen-controller.ts';
import { Curve } from '../../pictures/curve.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import { Action } from '../../parts/press/action.tsx';
import { Advised } from './advised.tsx';
import { BeginDays, BeginWhen } from './begin.tsx';
import { Cleaning } from './cleaning.tsx';
import { Facts } from './course/facts.tsx';
import { createCourse, PlanCourse } from './course/plan-course.tsx';
import { Verdict } from './course/verdict.tsx';
import { Methods } from './methods.tsx';
import { Notices } from './notices.tsx';
import { Shopping } from './shopping.tsx';
import { Pours } from './pours.tsx';
import { PlanHead } from './plan-head.tsx';
import { Questions } from './questions.tsx';
import { RestsOnLink } from './rests-on.tsx';
import { Steps } from './steps/steps.tsx';

const PARTS = ['steps', 'methods', 'pours', 'heat', 'ask', 'lists'] as const;
type Part = (typeof PARTS)[number];

const SurenessLine = lazyPage(
  ['advice'],
  async () => (await import('./advice/index.ts')).SurenessLine,
);

/** Understand, print, shop, ask; and start. */
export function PlanPage(props: {
  plan: Plan;
  pictures: PlanPictures;
  openRun: boolean;
  onStart: () => void;
  /** Answers change the kitchen, and the plan with it; absent: the plan is only read. */
  onKitchen?: (kitchen: Kitchen) => void;
  /** As it lies on the desk: a moment ahead of the plan after an answer, so that the next answer is added to it. */
  kitchen?: Kitchen | undefined;
  /** When the work begins; absent: the plan counts hours from its start. */
  begin?: { startWallMs: number; onChange: (startWallMs: number) => void };
}) {
  const [part, setPart] = createSignal<Part>('steps');
  const [picked, setPicked] = createSignal<string>();
  const kitchen = () => props.kitchen ?? props.plan.kitchen;
  let nav: HTMLElement | undefined;
  const showPart = (next: Part) => {
    setPart(next);
    nav?.scrollIntoView();
  };
  const { course, ends, clock, isLate, sureness } = createCourse(
    () => props.plan,
    () => props.pictures.options,
    () => props.begin?.startWallMs,
  );
  return (
    <main class="place plan-place">
      <PlanHead
        plan={props.plan}
        openRun={props.openRun}
        onStart={props.onStart}
        startWallMs={props.begin?.startWallMs}
      >
        <Show when={props.begin}>
          {(begin) => (
            <BeginWhen
              startWallMs={begin().startWallMs}
              zone={clock().zone}
              onChange={begin().onChange}
            />
          )}
        </Show>
      </PlanHead>
      <div class="plan-answer">
        <Verdict plan={props.plan} course={course()} clock={clock()} ends={ends()}>
          <Suspense>
            <Show when={sureness()}>
              {(sure) => <SurenessLine plan={props.plan} sureness={sure()} />}
            </Show>
          </Suspense>
        </Verdict>
        <Advised
          plan={props.plan}
          options={props.pictures.options}
          kitchen={kitchen()}
          onKitchen={props.onKitchen}
          begin={props.begin}
          isLate={isLate()}
        />
      </div>
      <PlanCourse plan={props.plan} course={course()} clock={clock()} ends={ends()} />
      <Facts plan={props.plan} clock={clock()} />
      <Notices plan={props.plan} onPart={showPart} />
      <Show when={props.begin}>
        {(begin) => (
          <BeginDays
            startWallMs={begin().startWallMs}
            zone={clock().zone}
            {...(props.plan.days && { days: props.plan.days })}
          />
        )}
      </Show>
      <p class="standing-line">{t('plan-page.standing')}</p>
      <nav class="parts" ref={(element) => (nav = element)} aria-label={t('plan-page.parts')}>
        <For each={PARTS}>
          {(id) => (
            <button
              type="button"
              data-part={id}
              aria-pressed={part() === id}
              onClick={() => setPart(id)}
            >
              {t(`plan-page.part.${id}`)}
            </button>
          )}
        </For>
      </nav>
      <div class="plan-parts">
        <section
          classList={{ 'part--off': part() !== 'steps' }}
          aria-label={t('plan-page.part.steps')}
          data-print="wall"
        >
          <h2 class="visually-hidden">{t('plan-page.part.steps')}</h2>
          <Steps plan={props.plan} course={course()} clock={clock()} />
        </section>
        <section
          classList={{ 'part--off': part() !== 'methods' }}
          aria-label={t('plan-page.part.methods')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.methods')}</h2>
          <Methods plan={props.plan} kitchen={kitchen()} onKitchen={props.onKitchen} />
        </section>
        <section
          classList={{ 'part--off': part() !== 'pours' }}
          aria-label={t('plan-page.part.pours')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.pours')}</h2>
          <KitchenPlan kitchen={props.plan.kitchen} selected={picked()} onSelect={setPicked} />
          <Pours pours={props.pictures.pours} moves={props.pictures.pourMoves} />
          <RestsOnLink />
        </section>
        <section
          classList={{ 'part--off': part() !== 'heat' }}
          aria-label={t('plan-page.part.heat')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.heat')}</h2>
          <p class="quiet">{t('plan-page.heat.about')}</p>
          <RestsOnLink />
          <div class="curves">
            <For each={props.pictures.heat}>{(picture) => <Curve picture={picture} />}</For>
          </div>
        </section>
        <section classList={{ 'part--off': part() !== 'ask' }} aria-label={t('plan-page.part.ask')}>
          <Questions
            kitchen={kitchen()}
            onKitchen={props.onKitchen}
            changes={props.pictures.changes}
          />
        </section>
        <section
          classList={{ 'part--off': part() !== 'lists' }}
          aria-label={t('plan-page.part.lists')}
        >
          <Action class="button button--plain" onPress={() => window.print()}>
            {t('plan-page.print.all')}
          </Action>
          <Shopping plan={props.plan} />
          <Cleaning plan={props.plan} />
        </section>
      </div>
    </main>
  );
}
