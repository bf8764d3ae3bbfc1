import { LIMITS, type Room } from '../../../../../core/kitchen/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import { t } from '../../../../context/language.ts';
import type { SurveyController } from '../controller/survey-controller.ts';
import { HoodFields } from '../fixture/hood-fields.tsx';
import { Typed } from '../inputs/typed.tsx';
import { WindowFields } from './window-fields.tsx';

/** Room, hood and window: how hot and how stuffy the purge gets, and how many burners may glow at once. */
export function AirChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const room = () => survey.kitchen().room;
  const set = (change: Partial<Room>, what: Message) =>
    survey.change({ ...survey.kitchen(), room: { ...room(), ...change } }, what);
  const forgetOutdoor = (): void => {
    const { outdoorC: _gone, ...rest } = room();
    survey.change({ ...survey.kitchen(), room: rest }, message('survey.done.outdoor'));
  };
  return (
    <div class="chapter chapter--two">
      <section aria-label={t('survey.air.hood')}>
        <h2>{t('survey.air.hood.heading')}</h2>
        <HoodFields survey={survey} />
      </section>
      <section aria-label={t('survey.air.room')}>
        <h2>{t('survey.air.room.heading')}</h2>
        <div class="typed-row">
          <Typed
            label={t('survey.air.floor')}
            quantity="area"
            path="room.floorAreaM2"
            value={room().floorAreaM2}
            allowed={LIMITS.floorAreaM2}
            hint={t('survey.air.floor.hint')}
            onValue={(floorAreaM2) => set({ floorAreaM2 }, message('survey.done.floor'))}
          />
          <Typed
            label={t('survey.air.ceiling')}
            quantity="length"
            path="room.heightM"
            value={room().heightM}
            allowed={LIMITS.ceilingM}
            onValue={(heightM) => set({ heightM }, message('survey.done.ceiling'))}
          />
        </div>
        <WindowFields window={room().window} onWindow={(window, what) => set({ window }, what)} />
        <h3>{t('survey.air.outdoor.heading')}</h3>
        <div class="typed-row">
          <Typed
            label={t('survey.air.outdoor')}
            quantity="temperature"
            path="room.outdoorC"
            value={room().outdoorC}
            allowed={LIMITS.outdoorC}
            empty={t('survey.air.outdoor.expected')}
            hint={t('survey.air.outdoor.hint')}
            onValue={(outdoorC) => set({ outdoorC }, message('survey.done.outdoor'))}
            onEmpty={forgetOutdoor}
          />
        </div>
      </section>
    </div>
  );
}
