import { createSignal, For, Show } from 'solid-js';
import type { Kitchen } from '../../../core/kitchen/index.ts';
import type { Message } from '../../../core/messages/index.ts';
import {
  answersOf,
  headOf,
  lacksOf,
  placesOf,
  utensilsOf,
  verdictOf,
  vesselsOf,
  type Report,
} from '../../../core/report/index.ts';
import { say, t } from '../../context/language.ts';
import { RecordPicture } from './picture/record-picture.tsx';
import { RecordTable } from './record-table.tsx';
import { RecordText } from './record-text.tsx';

/** What a rabbi reads in two minutes and a household keeps: the same on the screen and on paper. */
export function RecordSheet(props: {
  report: Report;
  kitchen: Kitchen;
  zone: string;
  digest: string | undefined;
  /** Why a part of the journal cannot be told. */
  damage: Message | undefined;
}) {
  const lacks = () => lacksOf(props.report, props.zone);
  const utensils = () => utensilsOf(props.report, props.zone);
  const answers = () => answersOf(props.report, props.zone);
  const [isOpen, setIsOpen] = createSignal(false);
  return (
    <div class="record-sheet">
      <header>
        <h2>{props.report.kitchen}</h2>
        <ul class="record-facts">
          <For each={headOf(props.report, props.zone)}>{(line) => <li>{say(line)}</li>}</For>
        </ul>
        <p class="record-verdict">{say(verdictOf(props.report))}</p>
      </header>
      <section class="record-lacks" aria-label={t('report.section.lacks')}>
        <h3>{t('report.section.lacks')}</h3>
        <ul>
          <Show when={props.damage}>
            {(why) => (
              <li>
                <strong>{t('record-page.damaged')}</strong> {say(why())}
              </li>
            )}
          </Show>
          <For
            each={lacks()}
            fallback={<Show when={!props.damage}>{<li>{t('report.lack.none')}</li>}</Show>}
          >
            {(lack) => <li>{say(lack)}</li>}
          </For>
        </ul>
      </section>
      <RecordPicture kitchen={props.kitchen} places={placesOf(props.report)} />
      <div class="record-scroll">
        <RecordTable report={props.report} zone={props.zone} />
      </div>
      <ul>
        <For each={vesselsOf(props.report, props.zone)}>{(line) => <li>{say(line)}</li>}</For>
      </ul>
      <Show when={utensils().length > 0}>
        <section class="record-answers" aria-label={t('report.section.utensils')}>
          <h3>{t('report.section.utensils')}</h3>
          <ul>
            <For each={utensils()}>{(line) => <li>{say(line)}</li>}</For>
          </ul>
        </section>
      </Show>
      <Show when={answers().length > 0}>
        <section class="record-answers" aria-label={t('report.section.answers')}>
          <h3>{t('report.section.answers')}</h3>
          <ul>
            <For each={answers()}>{(answer) => <li>{say(answer)}</li>}</For>
          </ul>
        </section>
      </Show>
      <footer class="record-foot">
        <p class="record-digest">
          <Show when={props.digest} fallback={t('record-page.no-digest')}>
            {(digest) => (
              <>
                <strong>{t('report.digest', { digest: digest() })}</strong>{' '}
                {t('report.digest.check')}
              </>
            )}
          </Show>
        </p>
        <p class="quiet">
          <Show when={props.report.app}>{(app) => <>{t('report.app', { app: app() })} </>}</Show>
          {t('report.standing.no-ruling')} {t('report.standing.customs')}{' '}
          {t('report.standing.clock')}
        </p>
      </footer>
      <details class="record-moments" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
        <summary>{t('record-page.moments')}</summary>
        <Show when={isOpen()}>
          <RecordText report={props.report} zone={props.zone} />
        </Show>
      </details>
    </div>
  );
}
