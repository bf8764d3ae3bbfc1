import { say } from '../../context/language.ts';
import '../../styles/kitchen/custom.css';
import { createSignal, For, Show } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import type { PlanPictures } from '../../controllers/kitchen/kitchen-controller.ts';
import { Action } from '../../parts/action.tsx';
import { Curve } from '../../pictures/curve.tsx';
import { KitchenPlan } from '../../pictures/kitchen-plan.tsx';
import { Timeline } from '../../pictures/timeline.tsx';
import { PURPOSE_NAMES } from '../../labels/names.ts';
import { bandInWords, lengthInWords } from '../../labels/time.ts';
import { customName } from '../../../core/custom/index.ts';
import { Begin } from './begin.tsx';
import { Cleaning } from './cleaning.tsx';
import { Methods } from './methods.tsx';
import { Shopping } from './shopping.tsx';
import { Pours } from './pours.tsx';
import { Questions } from './questions.tsx';
import { Steps } from './steps.tsx';

const PARTS = [
  ['course', 'The course'],
  ['methods', 'Methods'],
  ['steps', 'Every step'],
  ['pours', 'Where it is poured'],
  ['heat', 'Heat and air'],
  ['ask', 'To ask'],
  ['lists', 'To buy and to clean'],
] as const;
type Part = (typeof PARTS)[number][0];

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
  const [part, setPart] = createSignal<Part>('course');
  const [picked, setPicked] = createSignal<string>();
  const kitchen = () => props.kitchen ?? props.plan.kitchen;
  return (
    <main class="place plan-place">
      <header class="plan-head">
        <div>
          <p class="quiet">
            {PURPOSE_NAMES[props.plan.purpose]}, {customName(props.plan.kitchen.household)}
          </p>
          <h1>{props.plan.kitchen.name}</h1>
        </div>
        <div class="button-row plan-actions">
          <Action class="button button--plain" onPress={() => window.print()}>
            Print
          </Action>
          <Action class="button button--ember button--big" onPress={props.onStart}>
            {props.openRun ? 'Back to the run' : 'Start the run'}
          </Action>
        </div>
      </header>
      <p class="standing-line">
        Customs differ. This plan follows the custom you chose; your rabbi’s word replaces it.
        Follow makers’ manuals and local codes; gas, electrical and plumbing work is for licensed
        people.
      </p>
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
      <Notices plan={props.plan} />
      <nav class="parts" aria-label="Parts of the plan">
        <For each={PARTS}>
          {([id, name]) => (
            <button type="button" aria-pressed={part() === id} onClick={() => setPart(id)}>
              {name}
            </button>
          )}
        </For>
      </nav>
      <div class="plan-parts">
        <section classList={{ 'part--off': part() !== 'course' }} aria-label="The course">
          <div class="course">
            <KitchenPlan kitchen={props.plan.kitchen} selected={picked()} onSelect={setPicked} />
            <Timeline plan={props.plan} />
          </div>
        </section>
        <section classList={{ 'part--off': part() !== 'methods' }} aria-label="Methods">
          <h2 class="visually-hidden">Methods</h2>
          <Methods plan={props.plan} kitchen={kitchen()} onKitchen={props.onKitchen} />
        </section>
        <section classList={{ 'part--off': part() !== 'steps' }} aria-label="Every step">
          <Steps plan={props.plan} />
        </section>
        <section classList={{ 'part--off': part() !== 'pours' }} aria-label="Where it is poured">
          <h2 class="visually-hidden">Where it is poured</h2>
          <Pours pours={props.pictures.pours} />
        </section>
        <section classList={{ 'part--off': part() !== 'heat' }} aria-label="Heat and air">
          <h2 class="visually-hidden">Heat and air</h2>
          <p class="quiet">
            Worked out from your hardware, or from what is usual where you told nothing. Bands are
            wide where the physics or the hardware is; the plan uses the safe side.
          </p>
          <div class="curves">
            <For each={props.pictures.heat}>{(picture) => <Curve picture={picture} />}</For>
          </div>
        </section>
        <section classList={{ 'part--off': part() !== 'ask' }} aria-label="To ask">
          <Questions kitchen={kitchen()} onKitchen={props.onKitchen} />
        </section>
        <section classList={{ 'part--off': part() !== 'lists' }} aria-label="To buy and to clean">
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

function Facts(props: { plan: Plan }) {
  const totals = () => props.plan.totals;
  return (
    <dl class="plan-facts">
      <div>
        <dt>From start to end</dt>
        <dd>{lengthInWords(props.plan.timetable.finishS)}</dd>
      </div>
      <div>
        <dt>Your hands busy</dt>
        <dd>{lengthInWords(totals().handsOnS)}</dd>
      </div>
      <div>
        <dt>Water boils here at</dt>
        <dd>{props.plan.boilingC.toFixed(1)} °C</dd>
      </div>
      <div>
        <dt>Kettles</dt>
        <dd>{bandInWords(totals().kettles.low, totals().kettles.high)}</dd>
      </div>
      <div>
        <dt>Boiling water</dt>
        <dd>{bandInWords(totals().hotL.low, totals().hotL.high)} L</dd>
      </div>
      <div>
        <dt>Electricity{totals().gasKWh > 0 ? ' and gas' : ''}</dt>
        <dd>
          {totals().electricityKWh.toFixed(1)} kWh
          <Show when={totals().gasKWh > 0}> + {totals().gasKWh.toFixed(1)} kWh</Show>
        </dd>
      </div>
    </dl>
  );
}

function Notices(props: { plan: Plan }) {
  return (
    <Show when={props.plan.notices.length > 0}>
      <ul class="notices">
        <For each={props.plan.notices}>{(notice) => <li>{say(notice)}</li>}</For>
      </ul>
    </Show>
  );
}
