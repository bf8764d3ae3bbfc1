import { Show } from 'solid-js';
import type { LeaderSilence } from '../host/tab-lock/index.ts';
import { t } from './context/language.ts';
import { Action } from './parts/press/action.tsx';
import './styles/run/watch.css';

/** Over a run that another page leads: who leads, how it is, and how to lead from here. */
export function WatchBand(props: {
  otherLead: LeaderSilence;
  wasTakenOver: boolean;
  needsArming: boolean;
  onArm: () => void;
  onLead: () => void;
}) {
  return (
    <div class="banner watch-band" role="status" data-lead={props.otherLead}>
      <strong>{t(props.wasTakenOver ? 'shell.other-lead.took-over' : 'shell.other-lead')}</strong>
      <span>{t(`shell.other-lead.${props.otherLead}`)}</span>
      <Show when={props.needsArming}>
        <Action class="button button--ember" name="arm" onPress={props.onArm}>
          {t('shell.other-lead.arm')}
        </Action>
      </Show>
      <Action class="button" name="lead-here" onPress={props.onLead}>
        {t('shell.other-lead.lead')}
      </Action>
    </div>
  );
}
