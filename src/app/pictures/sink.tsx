import { say, t } from '../context/language.ts';
import { For } from 'solid-js';
import type { Picture } from '../../core/plan/index.ts';
import '../styles/pictures.css';

type SinkPicture = Extract<Picture, { kind: 'sink' }>;

/** The sink in the order it is poured, top to bottom, with the kettle that reaches each part. */
export function SinkOrder(props: { picture: SinkPicture }) {
  const stateOf = (kettle: number) =>
    kettle === props.picture.kettle ? 'now' : kettle < props.picture.kettle ? 'past' : 'next';
  return (
    <ol class="sink-order" aria-label={t('run.picture.sink')}>
      <For each={props.picture.parts}>
        {(part) => (
          <li class={`sink-part sink-part--${stateOf(part.kettle)}`}>
            <span
              class="sink-part-kettle"
              aria-label={t('run.picture.sink.kettle', { kettle: part.kettle })}
            >
              {part.kettle}
            </span>
            <span>{say(part.name)}</span>
          </li>
        )}
      </For>
    </ol>
  );
}
