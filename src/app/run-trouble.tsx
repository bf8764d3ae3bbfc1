import { createSignal, Show } from 'solid-js';
import type { AppContext } from './app-context.ts';
import { TroubleBanner } from './banners.tsx';
import { t } from './context/language.ts';
import { putAside } from './controllers/failures/put-aside.ts';
import { reasonOf } from './controllers/failures/reason.ts';
import { Action } from './parts/press/action.tsx';
import { SignalWord } from './parts/signal-word.tsx';
import { exportRun } from './run-actions.ts';

async function putRunAside({ device, runs, tell }: AppContext): Promise<void> {
  try {
    const open = runs.openRun();
    if (open) await putAside(device.journals, open);
    await runs.letGo();
  } catch (error) {
    tell(reasonOf(error));
  }
}

/** The way out of a run that can only be shown: asked twice, since it is not led again. */
function PutAside(props: { context: AppContext }) {
  const [sure, setSure] = createSignal(false);
  return (
    <>
      <span class="caution-line">
        <SignalWord word="WARNING" /> {t('shell.put-aside.hot')}
      </span>
      <span>{t('shell.put-aside.about')}</span>
      <Show
        when={sure()}
        fallback={
          <Action class="button button--plain" name="put-aside" onPress={() => setSure(true)}>
            {t('shell.put-aside')}
          </Action>
        }
      >
        <Action class="button" name="leave-open" onPress={() => setSure(false)}>
          {t('shell.put-aside.keep')}
        </Action>
        <span>{t('shell.put-aside.sure')}</span>
        <Action
          class="button button--danger"
          name="put-it-aside"
          onPress={() => void putRunAside(props.context)}
        >
          {t('shell.put-aside.do')}
        </Action>
      </Show>
    </>
  );
}

/** What is wrong with the run or its store, on every page: to save the run, and to put it aside where it can only be shown. */
export function RunTrouble(props: { context: AppContext }) {
  const { runs } = props.context;
  const exportOpen = () => {
    const open = runs.openRun();
    return open ? () => void exportRun(props.context, open.id) : undefined;
  };
  return (
    <TroubleBanner trouble={runs.trouble()} onExport={exportOpen()}>
      <Show when={runs.trouble()?.kind === 'read-only'}>
        <PutAside context={props.context} />
      </Show>
    </TroubleBanner>
  );
}
