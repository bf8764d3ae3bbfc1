import { createSignal, For, Show } from 'solid-js';
import { untilTold } from '../../../../core/messages/index.ts';
import type { Request, RunView, TimerView } from '../../../../core/run/index.ts';
import { MS_PER_SECOND, SECONDS_PER_MINUTE } from '../../../../core/units/index.ts';
import { say, t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { wallZone } from '../../../context/zone.ts';
import { DayTold } from '../../../parts/time/day-told.tsx';
import { localDateTime, momentIn } from '../../../parts/time/local-date-time.ts';
import { when } from '../../../parts/time/when.ts';
import { WordsField } from '../../../parts/words-field.tsx';

/** A wait, seen close: until when, and what a person can say about it. */
export function TimerSheet(props: {
  view: RunView;
  timer: TimerView;
  nowMs: number;
  send: (request: Request) => void;
  onClose: () => void;
}) {
  const [part, setPart] = createSignal<'look' | 'earlier' | 'used'>('look');
  const rest = () => {
    const step = props.view.steps.find((one) => one.step.id === props.timer.step)?.step;
    return step?.kind === 'rest' ? step : undefined;
  };
  const until = () => when(props.nowMs + props.timer.leftS * MS_PER_SECOND, props.nowMs);
  const lines = () => (rest()?.stages[0]?.detail ?? []).map((one) => say(untilTold(one, until())));
  const done = (request: Request) => {
    props.send(request);
    props.onClose();
  };
  return (
    <Sheet label={say(props.timer.label)} onClose={props.onClose}>
      <h2>{say(untilTold(rest()?.title ?? props.timer.label, until()))}</h2>
      <For each={lines()}>{(line) => <p>{line}</p>}</For>
      <p class="clock-sheet-until">
        {t('run.timer.over', {
          when: until(),
          leftS: Math.ceil(props.timer.leftS / SECONDS_PER_MINUTE) * SECONDS_PER_MINUTE,
        })}
      </p>
      <Show when={part() === 'look'}>
        <div class="button-row">
          <Show when={rest()}>
            <Action class="button" name="was-earlier" onPress={() => setPart('earlier')}>
              {t('run.timer.was-earlier')}
            </Action>
            <Show when={props.timer.fixture}>
              <Action class="button" name="was-used" onPress={() => setPart('used')}>
                {t('run.timer.was-used')}
              </Action>
            </Show>
          </Show>
          <Action class="button button--plain" name="back" onPress={props.onClose}>
            {t('run.back')}
          </Action>
        </div>
      </Show>
      <Show when={part() === 'earlier'}>
        <LastHot {...props} onDone={done} onBack={() => setPart('look')} />
      </Show>
      <Show when={part() === 'used' && props.timer.fixture}>
        {(fixture) => <Used fixture={fixture()} onDone={done} onBack={() => setPart('look')} />}
      </Show>
    </Sheet>
  );
}

/** "It was last hot at …": the rest counts from then, on a person's word with how they know. */
function LastHot(props: {
  readonly timer: TimerView;
  readonly nowMs: number;
  readonly onDone: (request: Request) => void;
  readonly onBack: () => void;
}) {
  const beganMs = () => props.nowMs - props.timer.atLeastS * MS_PER_SECOND;
  const [at, setAt] = createSignal(localDateTime(beganMs(), wallZone()));
  const [reason, setReason] = createSignal('');
  const sinceMs = () => momentIn(at(), wallZone()) ?? Infinity;
  const earlier = () => sinceMs() < beganMs();
  const correct = () =>
    props.onDone({
      kind: 'correct-time',
      timer: props.timer.id,
      sinceWallMs: sinceMs(),
      reason: reason().trim(),
      // The sheet says day and time: a person who presses has read them.
      clockRight: true,
    });
  return (
    <>
      <label class="field">
        <span>{t('run.timer.last-hot')}</span>
        <input
          type="datetime-local"
          name="since"
          value={at()}
          max={localDateTime(beganMs(), wallZone())}
          onInput={(event) => setAt(event.currentTarget.value)}
        />
        <DayTold typed={at()} />
      </label>
      <WordsField
        label={t('run.timer.last-hot.why')}
        name="reason"
        words={reason()}
        onWords={setReason}
      />
      <p class="quiet">{t('run.timer.last-hot.about')}</p>
      <p>{t('run.start.now', { wallMs: props.nowMs, zone: wallZone() })}</p>
      <div class="button-row">
        <Action
          class="button button--ember"
          name="count-from-then"
          disabled={reason().trim() === '' || !earlier()}
          onPress={correct}
        >
          {t('run.timer.last-hot.press')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onBack}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}

/** Used during its rest, or a doubt of it: the rest begins again. */
function Used(props: {
  readonly fixture: string;
  readonly onDone: (request: Request) => void;
  readonly onBack: () => void;
}) {
  const [text, setText] = createSignal('');
  const report = () =>
    props.onDone({ kind: 'report-recheck', fixture: props.fixture, text: text().trim() });
  return (
    <>
      <p>{t('run.timer.used.about')}</p>
      <WordsField label={t('run.used.words')} name="what" words={text()} onWords={setText} />
      <div class="button-row">
        <Action class="button button--ember" name="rest-again" onPress={report}>
          {t('run.timer.used.press')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onBack}>
          {t('run.back')}
        </Action>
      </div>
    </>
  );
}
