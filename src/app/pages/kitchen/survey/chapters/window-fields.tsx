import { Show } from 'solid-js';
import { NEW_WINDOW } from '../../../../../core/editing/index.ts';
import { LIMITS, type Room } from '../../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import { t } from '../../../../context/language.ts';
import { Pick } from '../inputs/pick.tsx';
import { Typed } from '../inputs/typed.tsx';

type Told = 'opens' | 'none';

/** The window: one that opens and how large, none, or nothing pressed while nobody told. */
export function WindowFields(props: {
  window: Room['window'];
  onWindow: (window: NonNullable<Room['window']>, what: Message) => void;
}) {
  const told = (): Told | undefined => {
    if (props.window === undefined) return undefined;
    return props.window.areaM2 > 0 ? 'opens' : 'none';
  };
  const change = (window: Partial<NonNullable<Room['window']>>): void => {
    const { areaM2, heightM } = { ...NEW_WINDOW, ...props.window, ...window };
    props.onWindow({ areaM2, heightM }, message('survey.done.window'));
  };
  const pick = (id: Told): void => {
    if (id === told()) return;
    change(id === 'opens' ? NEW_WINDOW : { areaM2: 0, heightM: 0 });
  };
  return (
    <>
      <Pick
        label={t('survey.air.window')}
        path="room.window"
        value={told()}
        choices={[
          { id: 'opens', name: t('survey.air.window.opens') },
          { id: 'none', name: t('survey.air.window.none') },
        ]}
        onPick={pick}
      />
      <Show when={told() === 'opens' && props.window}>
        {(window) => (
          <>
            <p class="tell">{t('survey.air.window.note')}</p>
            <div class="typed-row">
              <Typed
                label={t('survey.air.opening')}
                quantity="area"
                value={window().areaM2}
                allowed={LIMITS.windowAreaM2}
                onValue={(areaM2) => change({ areaM2 })}
              />
              <Typed
                label={t('survey.air.height')}
                quantity="length"
                value={window().heightM}
                allowed={LIMITS.windowHeightM}
                onValue={(heightM) => change({ heightM })}
              />
            </div>
          </>
        )}
      </Show>
    </>
  );
}
