import { lazyPage, say, t } from '../../context/language.ts';
import '../../styles/kitchen/custom.css';
import { createSignal, For, type JSX, Show, Suspense } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import { gravestFirst, gravityOf, type Plan } from '../../../core/plan/index.ts';
import type { PlanPictures } from '../../controllers/kitchen/plan-of.ts';
import { Curve } from '../../pictures/curve.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import { Timeline } from '../../pictures/timeline.tsx';
import { Advised } from './advised.tsx';
import { Begin } from './begin.tsx';
import { Cleaning } from './cleaning.tsx';
import { Methods } from './methods.tsx';
import { Shopping } from './shopping.tsx';
import { Pours } from './pours.tsx';
import { PlanHead } from './plan-head.tsx';
import { Questions } from './questions.tsx';
import { RestsOnLink } from './rests-on.tsx';
import { Steps } from './steps.tsx';

const PARTS = ['course', 'methods', 'steps', 'pours', 'heat', 'ask', 'lists'] as const;
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
  /** When the open run ends by what happened. */
  outlook?: JSX.Element;
  onStart: () => void;
  /** Answers change the kitchen, and the plan with it; absent: the plan is only read. */
  onKitchen?: (kitchen: Kitchen) => void;
  /** As it lies on the desk: a moment ahead of the plan after an answer, so that the next answer is added to it. */
  kitchen?: Kitchen | undefined;
  /** When the work begins; absent: the plan counts hours from its start. */
  begin?: { startWallMs: number; onChange: (startWallMs: number) => void };
}) {
  const [part, setPart] = createSignal<Part>('course');
  const [picked, setPicked] = createSignal<string>();
  const kitchen = () => props.kitchen ?? props.plan.kitchen;
  return (
    <main class="place plan-place">
      <PlanHead
        plan={props.plan}
        openRun={props.openRun}
        onStart={props.onStart}
        startWallMs={props.begin?.startWallMs}
      />
      {props.outlook}
      <p class="standing-line">{t('plan-page.standing')}</p>
      <Show when={props.begin}>
        {(begin) => (
          <Begin
            startWallMs={begin().startWallMs}
            zone={zoneOf(props.plan)}
            {...(props.plan.days && { days: props.plan.days })}
            onChange={begin().onChange}
          />
        )}
      </Show>
      <Facts plan={props.plan} />
      <Suspense>
        <SurenessLine plan={props.plan} options={props.pictures.options} />
      </Suspense>
      <Notices plan={props.plan} />
      <Advised
        plan={props.plan}
        options={props.pictures.options}
        kitchen={kitchen()}
        onKitchen={props.onKitchen}
        begin={props.begin}
      />
      <nav class="parts" aria-label={t('plan-page.parts')}>
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
          classList={{ 'part--off': part() !== 'course' }}
          aria-label={t('plan-page.part.course')}
        >
          <div class="course">
            <KitchenPlan kitchen={props.plan.kitchen} selected={picked()} onSelect={setPicked} />
            <Timeline plan={props.plan} />
          </div>
        </section>
        <section
          classList={{ 'part--off': part() !== 'methods' }}
          aria-label={t('plan-page.part.methods')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.methods')}</h2>
          <Methods plan={props.plan} kitchen={kitchen()} onKitchen={props.onKitchen} />
        </section>
        <section
          classList={{ 'part--off': part() !== 'steps' }}
          aria-label={t('plan-page.part.steps')}
        >
          <Steps plan={props.plan} />
        </section>
        <section
          classList={{ 'part--off': part() !== 'pours' }}
          aria-label={t('plan-page.part.pours')}
        >
          <h2 class="visually-hidden">{t('plan-page.part.pours')}</h2>
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
          <Shopping plan={props.plan} />
          <Cleaning plan={props.plan} />
        </section>
      </div>
    </main>
  );
}

/** The kitchen's own zone, or the tablet's where no place was told. */
function zoneOf({ kitchen }: Plan): string {
  return kitchen.place?.zone ?? new Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** The six figures at the head of the plan. */
function Facts(props: { plan: Plan }) {
  const facts = (): readonly (readonly [name: string, value: string])[] => {
    const { timetable, totals, boilingC } = props.plan;
    const { kettles, hotL, electricityKWh, gasKWh } = totals;
    return [
      [t('plan-page.facts.whole'), t('plan-page.duration', { lengthS: timetable.finishS })],
      [t('plan-page.facts.hands'), t('plan-page.duration', { lengthS: totals.handsOnS })],
      [t('plan-page.facts.boils-at'), t('plan-page.temperature', { tempC: boilingC })],
      [
        t('plan-page.facts.kettles'),
        t('plan-page.count', { low: kettles.low, high: kettles.high }),
      ],
      [t('plan-page.facts.hot-water'), t('plan-page.litres', { lowL: hotL.low, highL: hotL.high })],
      gasKWh > 0
        ? [
            t('plan-page.facts.electricity-and-gas'),
            t('plan-page.energies', { electricityKWh, gasKWh }),
          ]
        : [t('plan-page.facts.electricity'), t('plan-page.energy', { kWh: electricityKWh })],
    ];
  };
  return (
    <dl class="plan-facts">
      <For each={facts()}>
        {([name, value]) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        )}
      </For>
    </dl>
  );
}

function Notices(props: { plan: Plan }) {
  return (
    <Show when={props.plan.notices.length > 0}>
      <ul class="notices">
        <For each={gravestFirst(props.plan.notices)}>
          {(notice) => <li class={`notice--${gravityOf(notice)}`}>{say(notice)}</li>}
        </For>
      </ul>
    </Show>
  );
}
