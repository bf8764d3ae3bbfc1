import { createSignal, lazy, Show, Suspense } from 'solid-js';
import { ownCustomOf } from '../../../../../core/custom/index.ts';
import type { CustomId, Household, Purpose } from '../../../../../core/kitchen/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { CUSTOM_NAMES, PURPOSE_NAMES } from '../../../../labels/names.ts';
import { Pick } from '../fields/pick.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed } from '../fields/typed.tsx';

const OwnCustomSheet = lazy(async () => ({
  default: (await import('../../../custom/index.ts')).OwnCustomSheet,
}));

const LIGHTING = { least: 0, most: 90 } as const;
const USUAL_LIGHTING_MIN = 18;
const PEOPLE = { least: 1, most: 8 } as const;
const PURPOSE_TELLS: Readonly<Record<Purpose, string>> = {
  'new-kitchen': 'It was not kosher, or nobody knows.',
  passover: 'It is kosher and turns over for the festival.',
  'mix-up': 'Meat and dairy met, or something doubtful was cooked.',
};

/** Why, by which custom, and how many hands. */
export function PeopleChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const [own, setOwn] = createSignal(false);
  const household = () => survey.kitchen().household;
  const set = (change: Partial<Household>, what: string) =>
    survey.change({ ...survey.kitchen(), household: { ...household(), ...change } }, what);
  return (
    <div class="chapter chapter--two">
      <section aria-label="Purpose and custom">
        <h2>Why is it purged, and by which custom?</h2>
        <Pick
          label="Why"
          wide
          path="household.purpose"
          value={household().purpose}
          choices={(Object.entries(PURPOSE_NAMES) as [Purpose, string][]).map(([id, name]) => ({
            id,
            name,
            tell: PURPOSE_TELLS[id],
          }))}
          onPick={(purpose) => set({ purpose }, PURPOSE_NAMES[purpose])}
        />
        <Pick
          label="Custom"
          path="household.custom"
          value={household().custom}
          choices={(Object.entries(CUSTOM_NAMES) as [CustomId, string][]).map(([id, name]) => ({
            id,
            name,
          }))}
          onPick={(custom) => set({ custom }, CUSTOM_NAMES[custom])}
        />
        <p class="tell">
          Customs differ. The plan follows the custom you chose; your rabbi’s word replaces it.
        </p>
        <Action class="button" onPress={() => setOwn(true)}>
          {ownCustomOf(household())
            ? `Change “${ownCustomOf(household())?.name}”`
            : 'Make a custom of our own'}
        </Action>
        <Show when={own()}>
          <Suspense>
            <OwnCustomSheet
              kitchen={survey.kitchen()}
              onKitchen={(kitchen) => survey.change(kitchen, 'Our own custom changed')}
              onClose={() => setOwn(false)}
            />
          </Suspense>
        </Show>
      </section>
      <section aria-label="Hands and days">
        <h2>Who works, and when not?</h2>
        <div class="typed-row">
          <Typed
            label="People working at once"
            quantity="count"
            path="household.people"
            value={household().people}
            allowed={PEOPLE}
            onValue={(people) => set({ people }, 'People changed')}
          />
        </div>
        <Pick
          label="Sabbath and festivals"
          path="household.keepsRestDays"
          value={household().keepsRestDays ? 'yes' : 'no'}
          choices={[
            { id: 'yes', name: 'No work, no sound' },
            { id: 'no', name: 'Plan through them' },
          ]}
          onPick={(is) => set({ keepsRestDays: is === 'yes' }, 'Rest days changed')}
        />
        <Show when={household().keepsRestDays}>
          <div class="typed-row">
            <Typed
              label="Candles lit before sunset"
              quantity="minutes"
              path="household.lightingMin"
              value={household().lightingMin ?? USUAL_LIGHTING_MIN}
              allowed={LIGHTING}
              onValue={(lightingMin) => set({ lightingMin }, 'Lighting changed')}
            />
          </div>
        </Show>
        <Pick
          label="Lanes of a pour"
          path="household.laneDirection"
          value={household().laneDirection ?? 'back-to-front'}
          choices={[
            { id: 'back-to-front', name: 'Back to front (custom)' },
            { id: 'shortest', name: 'The shortest way' },
          ]}
          onPick={(laneDirection) => set({ laneDirection }, 'Lanes changed')}
        />
      </section>
    </div>
  );
}
