import { For, Show } from 'solid-js';
import type { Course } from '../../../core/plan/index.ts';
import { t } from '../../context/language.ts';
import { drawnDueS, type Ends } from './frame.ts';

const HAPPENINGS = ['rest', 'heat', 'cool', 'water', 'thaw'] as const;

/** What the colours mean; only of what is in the picture. */
export function CourseKey(props: { course: Course; ends: Ends; finishS: number }) {
  const has = (happening: (typeof HAPPENINGS)[number]) =>
    props.course.rows.some(({ bars }) => bars.some((bar) => bar.happening === happening));
  const dueS = () => drawnDueS(props.ends, props.finishS);
  const isOver = () => (props.ends.due?.doneS ?? 0) > (dueS() ?? Infinity);
  const isWatched = () => props.course.lanes.some(({ watches }) => watches.length > 0);
  return (
    <figcaption class="course-key">
      <span>
        <i class="course-swatch course-swatch--hands" />
        {t('plan-page.course.key.hands')}
      </span>
      <For each={HAPPENINGS.filter(has)}>
        {(happening) => (
          <span>
            <i class={`course-swatch course-swatch--${happening}`} />
            {t(`plan-page.course.key.${happening}`)}
          </span>
        )}
      </For>
      <Show when={isWatched()}>
        <span>
          <i class="course-swatch course-swatch--watch" />
          {t('plan-page.course.key.watch')}
        </span>
      </Show>
      <Show when={!props.course.cut}>
        <span>
          <i class="course-swatch course-swatch--chain" />
          {t('plan-page.course.key.chain')}
        </span>
      </Show>
      <span>
        <i class="course-swatch course-swatch--slack" />
        {t('plan-page.course.key.slack')}
      </span>
      <Show when={dueS() !== undefined}>
        <span>
          <i class="course-swatch course-swatch--due" />
          {t('plan-page.course.key.due')}
        </span>
      </Show>
      <Show when={isOver()}>
        <span>
          <i class="course-swatch course-swatch--late" />
          {t('plan-page.course.key.late')}
        </span>
      </Show>
      <Show when={props.course.cut}>
        <span>
          <i class="course-swatch course-swatch--gone" />
          {t('plan-page.course.gone')}
        </span>
      </Show>
      <Show when={props.course.idle.length > 0}>
        <span>{t('plan-page.course.key.night')}</span>
      </Show>
    </figcaption>
  );
}
