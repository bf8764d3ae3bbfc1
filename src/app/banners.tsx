import { type JSX, Show } from 'solid-js';
import type { Message } from '../core/messages/index.ts';
import { say, t } from './context/language.ts';
import { formatRoute, type PageId } from './context/route.ts';
import type { LostRun } from './controllers/run/lost-run.ts';
import type { Trouble } from './controllers/run/trouble.ts';
import { Action } from './parts/press/action.tsx';
import { when } from './parts/time/when.ts';

/** A run goes on while another page is looked at. */
export function OpenRunBanner(props: { show: boolean }) {
  return (
    <Show when={props.show}>
      <div class="banner" data-banner="open-run">
        <strong>{t('shell.open-run')}</strong>
        <a class="button" data-action="back-to-run" href={formatRoute({ page: 'run' })}>
          {t('shell.open-run.back')}
        </a>
      </div>
    </Show>
  );
}

/** A newer app waits; taken only by the person's choice and never while a run is open. */
export function UpdateBanner(props: { show: boolean; onTake: () => void }) {
  return (
    <Show when={props.show}>
      <div class="banner" data-banner="update">
        <span>{t('shell.update')}</span>
        <Action class="button" name="take-update" onPress={props.onTake}>
          {t('shell.update.take')}
        </Action>
      </div>
    </Show>
  );
}

/** Storage that cannot be read or written: told on every page, not only in a run. */
export function TroubleBanner(props: {
  trouble: Trouble | undefined;
  onExport: (() => void) | undefined;
  children: JSX.Element;
}) {
  return (
    <Show when={props.trouble}>
      {(trouble) => (
        <div class="banner banner--trouble" role="alert" data-trouble={trouble().kind}>
          <strong>{t(`shell.trouble.${trouble().kind}`)}</strong>
          <span>{say(trouble().message)}</span>
          <Show when={props.onExport}>
            {(save) => (
              <Action class="button" name="save-run" onPress={save()}>
                {t('shell.save-run')}
              </Action>
            )}
          </Show>
          {props.children}
        </div>
      )}
    </Show>
  );
}

/** What was just refused. */
export function NoticeBanner(props: { notice: Message | undefined }) {
  return (
    <Show when={props.notice}>
      {(notice) => (
        <div class="banner" role="status" data-key={notice().key}>
          {say(notice())}
        </div>
      )}
    </Show>
  );
}

/** A run was open here, and the store is empty: said, never taken for a beginning. */
export function LostRunBanner(props: { lostRun: LostRun; nowMs: number }) {
  return (
    <Show when={props.lostRun.lost()}>
      {(run) => (
        <div class="banner banner--trouble" role="alert" data-banner="lost-run">
          <strong>
            {t('shell.lost-run', {
              name: run().name,
              when: when(run().openedWallMs, props.nowMs),
            })}
          </strong>
          <span>{t('shell.lost-run.about')}</span>
          <Action class="button" name="dismiss-lost-run" onPress={props.lostRun.dismiss}>
            {t('shell.lost-run.dismiss')}
          </Action>
        </div>
      )}
    </Show>
  );
}

/** A page that needs a kitchen or a run first; whether there is a run is not known while it cannot be read. */
export function NoPage(props: { page: PageId; isUnread: boolean }) {
  const lacks = () => (props.page === 'run' ? 'run' : 'kitchen');
  return (
    <main class="place">
      <h1>{t(props.isUnread ? 'shell.unread' : `shell.no-page.${lacks()}`)}</h1>
      <p>{t(props.isUnread ? 'shell.unread.about' : `shell.no-page.${lacks()}.about`)}</p>
      <p>
        <a
          class="button button--ember"
          data-action="go-on"
          href={formatRoute({ page: props.page === 'run' ? 'plan' : 'kitchen' })}
        >
          {t(`shell.no-page.${lacks()}.go`)}
        </a>
      </p>
    </main>
  );
}
