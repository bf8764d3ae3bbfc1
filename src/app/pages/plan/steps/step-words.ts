import { personName } from '../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../core/messages/index.ts';
import {
  titleUntil,
  type Course,
  type Plan,
  type Step,
  type StepGroup,
} from '../../../../core/plan/index.ts';
import { MS_PER_SECOND } from '../../../../core/units/index.ts';
import type { WallClock } from '../../../pictures/course/frame.ts';
import { nameOf } from '../../../pictures/course/bars.ts';
import { say, t } from '../../../context/language.ts';

/** More titles than these are counted, not told one after another. */
const TOLD = 3;

type At = { readonly wallMs: number; readonly zone: string };

/** A moment of a plan on the clock it is told by. */
export function wallAt({ startWallMs, zone }: WallClock, atS: number): At {
  return { wallMs: startWallMs + Math.round(atS) * MS_PER_SECOND, zone };
}

export function startOf({ timetable }: Plan, { id }: Step): number {
  return timetable.startS[id] ?? 0;
}

export function endOf(plan: Plan, step: Step): number {
  return startOf(plan, step) + step.durationS.typical;
}

const waits = ({ kind }: Step): boolean => kind === 'rest' || kind === 'cool' || kind === 'thaw';

/** "Counter left: 7 kettles of boiling water", or its titles. */
export function groupTitle(plan: Plan, { family, steps }: StepGroup): Message {
  const [first] = steps;
  const many = (kind: Step['kind']) => steps.filter((one) => one.kind === kind).length;
  const found = first && nameOf(plan, first.id);
  const name = found === undefined || typeof found === 'string' ? found : say(found);
  if (name !== undefined && family === 'water' && many('pour') > 1)
    return message('plan-page.steps.kettles', { name, kettles: many('pour') });
  if (name !== undefined && family === 'heat' && many('glow') > 1)
    return message('plan-page.steps.burners', { name, burners: many('glow') });
  const hands = steps.filter((step) => !waits(step));
  const told = hands.length > 0 ? hands : steps;
  return message('plan-page.steps.titles', {
    titles: told.slice(0, TOLD).map((step) => (waits(step) ? titleUntil(plan, step) : step.title)),
    more: Math.max(0, told.length - TOLD),
  });
}

/** "rests until Friday evening 17:40": what goes on by itself after the hands have left. */
export function groupUntil(plan: Plan, { steps }: StepGroup, clock: WallClock): string | undefined {
  const last = steps
    .filter(({ kind }) => kind === 'rest' || kind === 'cool')
    .toSorted((a, b) => endOf(plan, b) - endOf(plan, a))[0];
  if (!last || steps.length < 2) return undefined;
  const at = wallAt(clock, endOf(plan, last));
  return last.kind === 'rest'
    ? t('plan-page.course.until.rest', at)
    : t('plan-page.course.until.cool', at);
}

/** Numbers of the lanes in which a step stands. */
function peopleOf({ lanes }: Course, ids: readonly string[]): readonly number[] {
  return lanes.flatMap(({ hands, watches }, at) =>
    [...hands, ...watches].some(({ step }) => ids.includes(step)) ? [at] : [],
  );
}

/** "You and Helper 2"; empty where no hands are asked for. */
export function whoText(plan: Plan, course: Course, ids: readonly string[]): string {
  const people = peopleOf(course, ids).map((at) => personName(plan.kitchen.household, at));
  return people.length === 0 ? '' : t('plan-page.steps.who', { people });
}
