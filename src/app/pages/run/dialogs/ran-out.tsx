import { createSignal, Show } from 'solid-js';
import type { StepView } from '../../../../core/run/index.ts';
import { t } from '../../../context/language.ts';
import { Action } from '../../../parts/press/action.tsx';
import { Sheet } from '../../../parts/sheet.tsx';
import { Lanes } from '../../../pictures/lanes.tsx';
import { pouredShare } from '../step/progress.ts';

const STEP_SHARE = 0.1;
const LEAST_SHARE = 0.1;
const MOST_SHARE = 0.95;

function within(share: number): number {
  return Math.min(MOST_SHARE, Math.max(LEAST_SHARE, share));
}

/** "I ran out here": where the water gave out, by steps a wet finger can take. */
export function RanOut(props: {
  step: StepView;
  onRanOut: (share: number) => void;
  onClose: () => void;
}) {
  const [share, setShare] = createSignal(within(pouredShare(props.step) ?? 0.5));
  const lanes = () => {
    const picture = props.step.step.picture;
    return picture?.kind === 'lanes' ? picture : undefined;
  };
  return (
    <Sheet label={t('run.ran-out.where')} onClose={props.onClose}>
      <h2>{t('run.ran-out.where')}</h2>
      <Show when={lanes()} fallback={<p>{t('run.ran-out.one-more')}</p>}>
        {(picture) => (
          <>
            <div class="ran-out-picture">
              <Lanes picture={picture()} poured={share()} />
            </div>
            <div class="button-row">
              <Action
                class="button"
                name="further-back"
                onPress={() => setShare(within(share() - STEP_SHARE))}
              >
                {t('run.ran-out.back')}
              </Action>
              <Action
                class="button"
                name="further-on"
                onPress={() => setShare(within(share() + STEP_SHARE))}
              >
                {t('run.ran-out.on')}
              </Action>
              <span class="quiet">
                {t('run.ran-out.share', { percent: Math.round(share() * 100) })}
              </span>
            </div>
          </>
        )}
      </Show>
      <p class="quiet">{t('run.ran-out.about')}</p>
      <div class="button-row">
        <Action
          class="button button--ember"
          name="ran-out-here"
          onPress={() => props.onRanOut(share())}
        >
          {t('run.ran-out.press')}
        </Action>
        <Action class="button button--plain" name="back" onPress={props.onClose}>
          {t('run.back')}
        </Action>
      </div>
    </Sheet>
  );
}
