import { createSignal, For, Show } from 'solid-js';
import { COUNTRY_CODES, LIMITS, UNIT_SYSTEMS, unitsOf } from '../../../../../core/kitchen/index.ts';
import { newKitchen, placesLike, type Town } from '../../../../../core/editing/index.ts';
import { message } from '../../../../../core/messages/index.ts';
import { say, t, translator } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import type { SurveyController } from '../controller/survey-controller.ts';
import { countryName } from '../inputs/country-name.ts';
import { Pick, Select } from '../inputs/pick.tsx';
import { quantity } from '../inputs/quantities.ts';
import { Typed, TypedName } from '../inputs/typed.tsx';

const MOST_TOWNS = 6;

/** Countries by name; the code of one that is not in the table stands for itself. */
function countryChoices(now: string): readonly (readonly [string, string])[] {
  const known = COUNTRY_CODES.map((code) => [code, say(countryName(code))] as const);
  const { language } = translator();
  const sorted = known.toSorted((a, b) => a[1].localeCompare(b[1], language));
  return sorted.some(([code]) => code === now) ? sorted : [[now, now], ...sorted];
}

/** Country first: it sets mains, kettles and sizes. Then the town, for altitude and sunset. */
export function WhereChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const kitchen = () => survey.kitchen();
  const setCountry = (country: string): void => {
    const now = kitchen();
    // Before anything stands in it a kitchen is simply one of that country.
    const next =
      now.fixtures.length === 0
        ? { ...newKitchen({ name: now.name, country }, translator()), household: now.household }
        : { ...now, country };
    survey.change(next, message('survey.done.country', { country: countryName(country) }));
  };
  return (
    <div class="chapter">
      <div class="chapter-main">
        <h2>{t('survey.where.heading')}</h2>
        <div class="field-row">
          <TypedName
            label={t('survey.where.name')}
            value={kitchen().name}
            path="name"
            onValue={(name) => survey.change({ ...kitchen(), name }, message('survey.done.name'))}
          />
          <Select
            label={t('survey.where.country')}
            path="country"
            value={kitchen().country}
            choices={countryChoices(kitchen().country)}
            onPick={setCountry}
          />
        </div>
        <p class="tell">{t('survey.where.note')}</p>
        <Pick
          label={t('kitchen.choices.units')}
          path="household.units"
          value={unitsOf(kitchen())}
          choices={UNIT_SYSTEMS.map((id) => ({ id, name: t(`kitchen.units.${id}`) }))}
          onPick={(units) =>
            survey.change(
              { ...kitchen(), household: { ...kitchen().household, units } },
              message('survey.done.units'),
            )
          }
        />
        <Towns survey={survey} />
        <div class="typed-row">
          <Typed
            label={t('survey.where.altitude')}
            quantity="altitude"
            path="altitudeM"
            value={kitchen().altitudeM}
            allowed={LIMITS.altitudeM}
            hint={t('survey.where.altitude.hint')}
            onValue={(altitudeM) =>
              survey.change({ ...kitchen(), altitudeM }, message('survey.done.altitude'))
            }
          />
          <Typed
            label={t('survey.where.tap')}
            quantity="temperature"
            path="tapColdC"
            value={kitchen().tapColdC}
            allowed={LIMITS.tapColdC}
            hint={t('survey.where.tap.hint')}
            onValue={(tapColdC) =>
              survey.change({ ...kitchen(), tapColdC }, message('survey.done.tap'))
            }
          />
          <Typed
            label={t('survey.where.mains')}
            quantity="voltage"
            path="supplyV"
            value={kitchen().supplyV}
            allowed={LIMITS.voltsV}
            onValue={(supplyV) =>
              survey.change({ ...kitchen(), supplyV }, message('survey.done.mains'))
            }
          />
        </div>
      </div>
    </div>
  );
}

function Towns(props: { survey: SurveyController }) {
  const [text, setText] = createSignal('');
  const kitchen = () => props.survey.kitchen();
  const towns = () => (text().trim().length < 2 ? [] : placesLike(text(), MOST_TOWNS));
  const put = (town: Town): void => {
    const land = town.country === 'IL' ? 'israel' : 'diaspora';
    const { latDeg, lonDeg, zone, altitudeM } = town;
    props.survey.change(
      { ...kitchen(), altitudeM, place: { latDeg, lonDeg, zone, land } },
      message('survey.done.town', { town: town.name }),
    );
    setText('');
  };
  return (
    <div class="towns">
      <div class="typed typed--words">
        <label for="survey-town">{t('survey.where.town')}</label>
        <input
          id="survey-town"
          type="text"
          autocomplete="off"
          data-path="place"
          value={text()}
          placeholder={t('survey.where.town.empty')}
          onInput={(e) => setText(e.currentTarget.value)}
        />
      </div>
      <Show when={towns().length > 0}>
        <ul class="town-list" aria-label={t('survey.where.towns')}>
          <For each={towns()}>
            {(town) => (
              <li>
                <Action class="button button--plain" onPress={() => put(town)}>
                  {town.name}
                  <span class="quiet">
                    {t('survey.where.town.tells', {
                      country: countryName(town.country),
                      altitude: quantity('altitude', town.altitudeM),
                    })}
                  </span>
                </Action>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={text().trim().length >= 2 && towns().length === 0}>
        <p class="tell" role="status">
          {t('survey.where.town.none')}
        </p>
      </Show>
      <Show when={kitchen().place}>
        {(place) => (
          <>
            <p class="tell">
              {t('survey.where.sun', {
                latDeg: place().latDeg,
                lonDeg: place().lonDeg,
                zone: place().zone,
              })}
            </p>
            <Pick
              label={t('survey.where.land')}
              value={place().land}
              choices={[
                { id: 'israel', name: t('survey.land.israel') },
                { id: 'diaspora', name: t('survey.land.diaspora') },
              ]}
              onPick={(land) =>
                props.survey.change(
                  { ...kitchen(), place: { ...place(), land } },
                  message('survey.done.land'),
                )
              }
            />
          </>
        )}
      </Show>
    </div>
  );
}
