import { createEffect, createMemo, createSignal, onCleanup, Show } from 'solid-js';
import { doneS, dueOf, hoursOf } from '../../../../core/advice/index.ts';
import { courseOf, type Course, type Plan, type PlanOptions } from '../../../../core/plan/index.ts';
import type { ToldSureness } from '../../../controllers/planner/jobs.ts';
import { planner } from '../../../controllers/planner/planner.ts';
import type { Pressed } from '../../../pictures/course/bars.ts';
import { CoursePicture } from '../../../pictures/course/course-picture.tsx';
import type { Ends, WallClock } from '../../../pictures/course/frame.ts';
import { StepSheet } from './step-sheet.tsx';

/** The course of a plan, what it is held against, and the clock it is told by. */
export function createCourse(
  plan: () => Plan,
  options: () => PlanOptions,
  beginWallMs: () => number | undefined,
) {
  const due = createMemo(() => dueOf(plan(), options()));
  const isLate = () => {
    const of = due();
    return of !== undefined && doneS(plan(), of.of) > of.byS;
  };
  const course = createMemo((): Course => {
    const purge = isLate() && due()?.of === 'purge';
    return courseOf(plan(), hoursOf(plan()).work, ({ phase }) => !purge || phase === 'purge');
  });
  const [sureness, setSureness] = createSignal<ToldSureness>();
  createEffect(() => {
    const asked = { plan: plan(), options: options() };
    const search = new AbortController();
    onCleanup(() => search.abort());
    setSureness(undefined);
    const { signal } = search;
    planner.ask('sureness', asked, { signal }).then(setSureness, (error: unknown) => {
      if (!signal.aborted) throw error;
    });
  });
  const ends = createMemo((): Ends => {
    const of = due();
    const sure = sureness()?.sureness;
    return {
      ...(of && { due: { byS: of.byS, doneS: doneS(plan(), of.of), of: of.of } }),
      ...(sure && { nineInTenS: sure.nineInTenS }),
    };
  });
  const clock = createMemo((): WallClock => ({
    startWallMs: plan().days?.startWallMs ?? beginWallMs() ?? Date.now(),
    zone: plan().kitchen.place?.zone ?? new Intl.DateTimeFormat().resolvedOptions().timeZone,
  }));
  return { course, ends, clock, isLate, sureness };
}

/** The picture of the course, and the sheet of what is pressed in it. */
export function PlanCourse(props: { plan: Plan; course: Course; clock: WallClock; ends: Ends }) {
  const [pressed, setPressed] = createSignal<Pressed>();
  return (
    <>
      <CoursePicture {...props} onPress={setPressed} />
      <Show when={pressed()}>
        {(bar) => <StepSheet {...props} pressed={bar()} onClose={() => setPressed(undefined)} />}
      </Show>
    </>
  );
}
