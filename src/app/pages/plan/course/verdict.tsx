import { type JSX, Show } from 'solid-js';
import { message, type Message } from '../../../../core/messages/index.ts';
import type { Course, Cut, Plan } from '../../../../core/plan/index.ts';
import type { Ends, WallClock } from '../../../pictures/course/frame.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import { say, t } from '../../../context/language.ts';
import { isAboutLateness } from '../notices/leads.ts';

/** Hours without work that are told in one line. */
const TOLD = 2;

/** When it ends and whether that is in time; when one is free; where it is late, why. */
export function Verdict(props: {
  plan: Plan;
  course: Course;
  clock: WallClock;
  ends: Ends;
  children: JSX.Element;
}) {
  const wallMs = (atS: number) => props.clock.startWallMs + atS * MS_PER_SECOND;
  const zone = () => props.clock.zone;
  const overS = () => {
    const { due } = props.ends;
    return due ? due.doneS - due.byS : 0;
  };
  const isLate = () => overS() > 0;
  const cutMessage = ({ name, atS, fixtures }: Cut): Message =>
    message('plan-page.head.cut', {
      name,
      wallMs: wallMs(atS),
      zone: zone(),
      many: fixtures.length,
      of: purged().size,
    });
  /** Places that are purged by the plan. */
  const purged = () =>
    new Set(
      props.plan.steps.flatMap(({ phase, fixture }) =>
        phase === 'purge' && fixture !== undefined ? [fixture] : [],
      ),
    );
  const closedUp = () =>
    props.plan.kitchen.fixtures
      .filter(({ id }) => props.course.cut?.fixtures.includes(id))
      .map(({ name }) => name);
  const first = (): Message => {
    const { due } = props.ends;
    const { finishS } = props.plan.timetable;
    const end = { wallMs: wallMs(finishS), zone: zone() };
    if (props.course.cut) return cutMessage(props.course.cut);
    if (!due) return message('plan-page.head.ends', { ...end, lengthS: finishS });
    const purge = due.of === 'purge';
    return isLate()
      ? message('plan-page.head.late', {
          doneWallMs: wallMs(due.doneS),
          dueWallMs: wallMs(due.byS),
          zone: zone(),
          lateS: overS(),
          purge,
        })
      : message('plan-page.head.in-time', { ...end, spareS: -overS(), purge });
  };
  const free = (): Message => {
    const spans = props.course.free.slice(0, TOLD).map(({ fromS, toS }) =>
      message('plan-page.head.free.span', {
        wallMs: wallMs(fromS),
        toWallMs: wallMs(toS),
        zone: zone(),
      }),
    );
    if (spans.length === 0) return message('plan-page.head.never-free');
    return message('plan-page.head.free', {
      spans,
      people: props.plan.kitchen.household.people,
      more: props.course.free.length > TOLD,
    });
  };
  const why = () => props.plan.notices.filter(isAboutLateness);
  return (
    <div class="verdict" classList={{ 'verdict--late': isLate() }} data-verdict>
      <h2>{say(first())}</h2>
      <Show when={why()[0]}>
        {(notice) => (
          <details class="verdict-why">
            <summary>{t('plan-page.head.why')}</summary>
            <p>{say(notice())}</p>
          </details>
        )}
      </Show>
      <Show
        when={props.course.cut}
        fallback={
          <>
            <p class="verdict-free">{say(free())}</p>
            {props.children}
          </>
        }
      >
        <p class="verdict-closed">{t('plan-page.head.close-up', { fixtures: closedUp() })}</p>
      </Show>
    </div>
  );
}
