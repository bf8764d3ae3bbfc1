import { createSignal, Show, Suspense } from 'solid-js';
import { LIGHTING_MIN } from '../../../../../core/calendar/index.ts';
import { ownCustomOf } from '../../../../../core/custom/index.ts';
import {
  CUSTOMS,
  LANE_DIRECTIONS,
  LEAVEN_DAYS,
  POUR_UNTIL,
  LIMITS,
  PURPOSES,
  type Household,
} from '../../../../../core/kitchen/index.ts';
import { ARM_M } from '../../../../../core/pouring/index.ts';
import { message, type Message } from '../../../../../core/messages/index.ts';
import { lazyPage, t } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import type { SurveyController } from '../controller/survey-controller.ts';
import { LastHot } from '../inputs/last-hot.tsx';
import { Pick } from '../inputs/pick.tsx';
import { Typed, TypedName } from '../inputs/typed.tsx';

const OwnCustomSheet = lazyPage(
  ['kitchen', 'custom'],
  async () => (await import('../../../custom/index.ts')).OwnCustomSheet,
);

/** Why, by which custom, and how many hands. */
export function PeopleChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const [own, setOwn] = createSignal(false);
  const household = () => survey.kitchen().household;
  const ownName = () => ownCustomOf(household())?.name;
  const set = (change: Partial<Household>, what: Message) =>
    survey.change({ ...survey.kitchen(), household: { ...household(), ...change } }, what);
  return (
    <div class="chapter chapter--two">
      <section aria-label={t('survey.people.purpose')}>
        <h2>{t('survey.people.purpose.heading')}</h2>
        <Pick
          label={t('survey.people.why')}
          wide
          path="household.purpose"
          value={household().purpose}
          choices={PURPOSES.map((id) => ({
            id,
            name: t(`kitchen.purpose.${id}`),
            tell: t(`survey.purpose.${id}`),
          }))}
          onPick={(purpose) => set({ purpose }, message(`kitchen.purpose.${purpose}`))}
        />
        <Pick
          label={t('survey.people.custom')}
          path="household.custom"
          value={household().custom}
          choices={CUSTOMS.map((id) => ({ id, name: t(`common.custom.${id}`) }))}
          onPick={(custom) => set({ custom }, message(`common.custom.${custom}`))}
        />
        <p class="tell">{t('survey.people.customs-differ')}</p>
        <Action class="button" onPress={() => setOwn(true)}>
          {ownName() === undefined
            ? t('survey.people.own-custom')
            : t('survey.people.own-custom.change', { name: ownName() ?? '' })}
        </Action>
        <Show when={own()}>
          <Suspense>
            <OwnCustomSheet
              kitchen={survey.kitchen()}
              onKitchen={(kitchen) => survey.change(kitchen, message('survey.done.own-custom'))}
              onClose={() => setOwn(false)}
            />
          </Suspense>
        </Show>
      </section>
      <section aria-label={t('survey.people.days')}>
        <h2>{t('survey.people.days.heading')}</h2>
        <div class="typed-row">
          <Working survey={survey} />
        </div>
        <Pick
          label={t('survey.people.rest-days')}
          path="household.keepsRestDays"
          value={household().keepsRestDays ? 'yes' : 'no'}
          choices={[
            { id: 'yes', name: t('survey.rest-days.yes') },
            { id: 'no', name: t('survey.rest-days.no') },
          ]}
          onPick={(is) => set({ keepsRestDays: is === 'yes' }, message('survey.done.rest-days'))}
        />
        <Show when={household().keepsRestDays}>
          <div class="typed-row">
            <Typed
              label={t('survey.people.lighting')}
              quantity="minutes"
              path="household.lightingMin"
              value={household().lightingMin ?? LIGHTING_MIN}
              allowed={LIMITS.lightingMin}
              onValue={(lightingMin) => set({ lightingMin }, message('survey.done.lighting'))}
            />
          </div>
        </Show>
        <LastHotOfAll survey={survey} />
        <Pick
          label={t('survey.people.lanes')}
          path="household.laneDirection"
          value={household().laneDirection ?? 'back-to-front'}
          choices={LANE_DIRECTIONS.map((id) => ({ id, name: t(`kitchen.lanes.${id}`) }))}
          onPick={(laneDirection) => set({ laneDirection }, message('survey.done.lanes'))}
        />
        <Show when={household().purpose === 'passover'}>
          <Pick
            label={t('survey.people.leaven-day')}
            path="household.leavenDay"
            value={household().leavenDay ?? 'dawn-nightfall'}
            choices={LEAVEN_DAYS.map((id) => ({ id, name: t(`kitchen.leaven-day.${id}`) }))}
            onPick={(leavenDay) => set({ leavenDay }, message('survey.done.leaven-day'))}
          />
        </Show>
        <Pick
          label={t('survey.people.pour-until')}
          path="household.pourUntil"
          value={household().pourUntil ?? 'reached'}
          choices={POUR_UNTIL.map((id) => ({ id, name: t(`kitchen.pour-until.${id}`) }))}
          onPick={(pourUntil) => set({ pourUntil }, message('survey.done.pour-until'))}
        />
        <div class="typed-row">
          <Typed
            label={t('survey.people.arm')}
            quantity="length"
            path="household.armM"
            value={household().armM ?? ARM_M}
            allowed={LIMITS.armM}
            onValue={(armM) => set({ armM }, message('survey.done.arm'))}
          />
        </div>
      </section>
    </div>
  );
}

/** Told once for everything that no fixture or kettle tells otherwise. */
function LastHotOfAll(props: { survey: SurveyController }) {
  const household = () => props.survey.kitchen().household;
  const set = (lastHotAt: string | undefined) => {
    const { lastHotAt: _old, ...others } = household();
    const next = lastHotAt === undefined ? others : { ...others, lastHotAt };
    props.survey.change(
      { ...props.survey.kitchen(), household: next },
      message('survey.done.last-hot'),
    );
  };
  return (
    <LastHot
      label={t('survey.last-hot.all')}
      path="household.lastHotAt"
      value={household().lastHotAt}
      hint={t('survey.last-hot.all.hint')}
      onValue={set}
    />
  );
}

/** How many work at once, and what they are called. */
function Working(props: { survey: SurveyController }) {
  const kitchen = () => props.survey.kitchen();
  const household = () => kitchen().household;
  /** As they are typed, with commas between; none takes the field out. */
  const setNames = (text: string): void => {
    const { names: _old, ...others } = household();
    const typed = text.split(',').map((name) => name.trim().slice(0, LIMITS.nameLetters.most));
    const names = typed.filter((name) => name !== '').slice(0, LIMITS.people.most);
    const next = names.length === 0 ? others : { ...others, names };
    props.survey.change({ ...kitchen(), household: next }, message('survey.done.names'));
  };
  return (
    <>
      <Typed
        label={t('survey.people.working')}
        quantity="count"
        path="household.people"
        value={household().people}
        allowed={LIMITS.people}
        onValue={(people) =>
          props.survey.change(
            { ...kitchen(), household: { ...household(), people } },
            message('survey.done.people'),
          )
        }
      />
      <Show when={household().people > 1}>
        <TypedName
          label={t('survey.people.names')}
          hint={t('survey.people.names.hint')}
          path="household.names"
          value={household().names?.join(', ') ?? ''}
          most={LIMITS.people.most * LIMITS.nameLetters.most}
          mayBeEmpty
          onValue={setNames}
        />
      </Show>
    </>
  );
}
