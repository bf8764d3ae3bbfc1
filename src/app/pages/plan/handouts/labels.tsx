import { createMemo, createSignal, createUniqueId, For, Show } from 'solid-js';
import {
  labelPages,
  labelsOf,
  markClashes,
  usualPaper,
  type Label,
  type MarkLabel,
  type Paper,
  type RestingLabel,
} from '../../../../core/handouts/index.ts';
import { say, t } from '../../../context/language.ts';
import { HandoutFrame } from './handout-frame.tsx';
import type { HandoutProps } from './handout-props.ts';

const PAPERS = ['a4', 'letter'] as const satisfies readonly Paper[];

/** A mark for each place and a label for each rest, to cut out. */
export function LabelHandout(props: HandoutProps) {
  const [paper, setPaper] = createSignal<Paper>(usualPaper(props.plan.kitchen.country));
  const found = createMemo(() => labelsOf(props.plan));
  const pages = createMemo(() => labelPages(found().labels, paper()));
  const clashes = createMemo(() => markClashes(props.plan.kitchen));
  const zone = () =>
    props.plan.kitchen.place?.zone ?? new Intl.DateTimeFormat().resolvedOptions().timeZone;
  return (
    <HandoutFrame
      title={t('handouts.name.labels')}
      about={t('handouts.labels.about')}
      class="labels"
    >
      <fieldset class="labels-paper">
        <legend>{t('handouts.labels.paper')}</legend>
        <For each={PAPERS}>
          {(id) => (
            <label>
              <input
                type="radio"
                name="paper"
                checked={paper() === id}
                onChange={() => setPaper(id)}
              />
              {t(`handouts.labels.paper.${id}`)}
            </label>
          )}
        </For>
      </fieldset>
      <Show when={clashes().length > 0}>
        <div class="labels-clashes">
          <h3>{t('handouts.labels.clashes')}</h3>
          <ul>
            <For each={clashes()}>{({ text }) => <li>{say(text)}</li>}</For>
          </ul>
        </div>
      </Show>
      <Show when={found().undecided.length > 0}>
        <p class="labels-undecided">
          {t('handouts.labels.undecided', { names: found().undecided })}
        </p>
      </Show>
      <For each={pages()} fallback={<p>{t('handouts.labels.none')}</p>}>
        {(labels, at) => (
          <div class="label-page" data-paper={paper()}>
            <p class="label-page-head">
              {t('handouts.labels.head', {
                kitchen: props.plan.kitchen.name,
                page: at() + 1,
                pages: pages().length,
              })}
            </p>
            <div class="label-grid">
              <For each={labels}>{(label) => <OneLabel label={label} zone={zone()} />}</For>
            </div>
          </div>
        )}
      </For>
    </HandoutFrame>
  );
}

function OneLabel(props: { label: Label; zone: string }) {
  const mark = () => (props.label.kind === 'mark' ? props.label : undefined);
  const resting = () => (props.label.kind === 'resting' ? props.label : undefined);
  return (
    <div class="label" data-label={props.label.kind}>
      <Show when={mark()}>{(label) => <MarkWords label={label()} />}</Show>
      <Show when={resting()}>{(label) => <RestingWords label={label()} zone={props.zone} />}</Show>
    </div>
  );
}

function MarkWords(props: { label: MarkLabel }) {
  const id = createUniqueId();
  return (
    <>
      <svg class="label-band" viewBox="0 0 22 48" preserveAspectRatio="none" aria-hidden="true">
        <MarkPattern id={id} marking={props.label.marking} />
        <rect width="22" height="48" fill={`url(#${id})`} />
      </svg>
      <span class="label-letter">{t(`handouts.labels.letter.${props.label.marking}`)}</span>
      <span class="label-words">
        <strong>{t(`common.designation.${props.label.marking}`)}</strong>
        <span>{say(props.label.name)}</span>
      </span>
    </>
  );
}

/** Drawn, not a background: printers leave backgrounds out. Told apart in black and white. */
function MarkPattern(props: { id: string; marking: MarkLabel['marking'] }) {
  const drawn = {
    meat: () => <path d="M-2 2 2 -2M-2 10 10 -2M6 10 10 6" stroke-width="3.2" />,
    dairy: () => <circle cx="4" cy="4" r="2.2" fill="currentColor" stroke="none" />,
    pareve: () => <path d="M0 4H8M4 0V8" stroke-width="0.7" />,
  } as const;
  return (
    <pattern id={props.id} width="8" height="8" patternUnits="userSpaceOnUse">
      <g fill="none" stroke="currentColor">
        {drawn[props.marking]()}
      </g>
    </pattern>
  );
}

function RestingWords(props: { label: RestingLabel; zone: string }) {
  return (
    <span class="label-resting">
      <span class="label-rest-name">{say(props.label.name)}</span>
      <strong>{t('handouts.labels.resting')}</strong>
      <span class="label-until">
        {t('handouts.labels.do-not-heat')}
        <i class="write-in" />
      </span>
      <small>
        <Show when={props.label.plannedWallMs} fallback={t('handouts.labels.write')}>
          {(wallMs) => t('handouts.labels.planned', { wallMs: wallMs(), zone: props.zone })}
        </Show>
      </small>
    </span>
  );
}
