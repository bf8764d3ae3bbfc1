import { lazyPage, t } from '../../context/language.ts';
import '../../styles/kitchen/custom.css';
import '../../styles/plan/plan-days.css';
import { createSignal, type JSX, Show, Suspense } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Plan } from '../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../core/units/index.ts';
import type { PlanPictures } from '../../controllers/kitchen/plan-of.ts';
import type { Ticks } from '../../controllers/kitchen/ticks.ts';
import { Advised } from './advised.tsx';
import { BeginDays, BeginWhen } from './begin.tsx';
import { Facts } from './course/facts.tsx';
import { createCourse, PlanCourse } from './course/plan-course.tsx';
import { Verdict } from './course/verdict.tsx';
import { Notices } from './notices/notices.tsx';
import { PlanHead } from './plan-head.tsx';
import { PlanParts, type Part } from './plan-parts.tsx';

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
  onRehearse: () => void;
  /** Answers change the kitchen, and the plan with it; absent: the plan is only read. */
  onKitchen?: (kitchen: Kitchen) => void;
  /** As it lies on the desk: a moment ahead of the plan after an answer, so that the next answer is added to it. */
  kitchen?: Kitchen | undefined;
  /** What is ticked off the shopping list. */
  ticks?: Ticks;
  /** When the work begins; absent: the plan counts hours from its start. */
  begin?: { startWallMs: number; onChange: (startWallMs: number) => void };
}) {
  const [part, setPart] = createSignal<Part>('steps');
  const kitchen = () => props.kitchen ?? props.plan.kitchen;
  let parts: HTMLElement | undefined;
  const showPart = (next: Part) => {
    setPart(next);
    parts?.scrollIntoView();
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
        onRehearse={props.onRehearse}
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
            <Show when={sureness()}>{(sure) => <SurenessLine told={sure().told} />}</Show>
          </Suspense>
        </Verdict>
        {props.outlook}
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
            endWallMs={begin().startWallMs + props.plan.timetable.finishS * MS_PER_SECOND}
            zone={clock().zone}
            {...(props.plan.days && { days: props.plan.days })}
          />
        )}
      </Show>
      <p class="standing-line">{t('plan-page.standing')}</p>
      <PlanParts
        plan={props.plan}
        pictures={props.pictures}
        kitchen={kitchen()}
        onKitchen={props.onKitchen}
        ticks={props.ticks}
        course={course()}
        clock={clock()}
        part={part()}
        onPart={setPart}
        ref={(element) => (parts = element)}
      />
    </main>
  );
}
