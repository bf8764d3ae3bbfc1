import { createSignal, For, Show } from 'solid-js';
import { COUNTRY_CODES, countryOf } from '../../../../../core/kitchen/index.ts';
import { newKitchen, placesLike } from '../../../../../core/editing/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { Pick, Select } from '../fields/pick.tsx';
import { quantityText } from '../fields/quantities.ts';
import type { SurveyController } from '../survey-controller.ts';
import { Typed, TypedWords } from '../fields/typed.tsx';

const ALTITUDE_M = { least: -430, most: 5000 } as const;
const MAINS_V = { least: 90, most: 440 } as const;
const TAP_C = { least: 0.5, most: 40 } as const;
const MOST_TOWNS = 6;

/** Countries by name; the code of one that is not in the table stands for itself. */
function countryChoices(now: string): readonly (readonly [string, string])[] {
  const known = COUNTRY_CODES.map((code) => [code, countryOf(code)?.name ?? code] as const);
  const sorted = known.toSorted((a, b) => a[1].localeCompare(b[1]));
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
        ? { ...newKitchen({ name: now.name, country }), household: now.household }
        : { ...now, country };
    survey.change(next, `Country: ${countryOf(country)?.name ?? country}`);
  };
  return (
    <div class="chapter">
      <div class="chapter-main">
        <h2>Where is this kitchen?</h2>
        <div class="field-row">
          <TypedWords
            label="Name of the kitchen"
            value={kitchen().name}
            path="name"
            onValue={(name) => survey.change({ ...kitchen(), name }, 'Name changed')}
          />
          <Select
            label="Country"
            path="country"
            value={kitchen().country}
            choices={countryChoices(kitchen().country)}
            onPick={setCountry}
          />
        </div>
        <p class="tell">
          Five short pages, about ten minutes; everything is kept as you go. The country gives mains
          voltage, usual kettles, circuits and sizes. Change any of them later.
        </p>
        <Towns survey={survey} />
        <div class="typed-row">
          <Typed
            label="Altitude"
            quantity="altitude"
            path="altitudeM"
            value={kitchen().altitudeM}
            allowed={ALTITUDE_M}
            hint="Water boils cooler higher up."
            onValue={(altitudeM) => survey.change({ ...kitchen(), altitudeM }, 'Altitude changed')}
          />
          <Typed
            label="Cold tap water"
            quantity="temperature"
            path="tapColdC"
            value={kitchen().tapColdC}
            allowed={TAP_C}
            hint="Colder water takes longer to boil."
            onValue={(tapColdC) => survey.change({ ...kitchen(), tapColdC }, 'Tap water changed')}
          />
          <Typed
            label="Mains"
            quantity="voltage"
            path="supplyV"
            value={kitchen().supplyV}
            allowed={MAINS_V}
            onValue={(supplyV) => survey.change({ ...kitchen(), supplyV }, 'Mains changed')}
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
  const put = (town: ReturnType<typeof placesLike>[number]): void => {
    const land = town.country === 'IL' ? 'israel' : 'diaspora';
    const { latDeg, lonDeg, zone, altitudeM } = town;
    props.survey.change(
      { ...kitchen(), altitudeM, place: { latDeg, lonDeg, zone, land } },
      `Place: ${town.name}`,
    );
    setText('');
  };
  return (
    <div class="towns">
      <div class="typed typed--words">
        <label for="survey-town">Town, or the largest one near</label>
        <input
          id="survey-town"
          type="text"
          autocomplete="off"
          data-path="place"
          value={text()}
          placeholder="Type its first letters"
          onInput={(e) => setText(e.currentTarget.value)}
        />
      </div>
      <Show when={towns().length > 0}>
        <ul class="town-list" aria-label="Towns">
          <For each={towns()}>
            {(town) => (
              <li>
                <Action class="button button--plain" onPress={() => put(town)}>
                  {town.name}
                  <span class="quiet">
                    {countryOf(town.country)?.name ?? town.country},{' '}
                    {quantityText('altitude', town.altitudeM)}
                  </span>
                </Action>
              </li>
            )}
          </For>
        </ul>
      </Show>
      <Show when={text().trim().length >= 2 && towns().length === 0}>
        <p class="tell" role="status">
          No town of that name is in the list. Type the altitude below, or a larger town near.
        </p>
      </Show>
      <Show when={kitchen().place}>
        {(place) => (
          <>
            <p class="tell">
              Sun times for {place().latDeg}°, {place().lonDeg}°, clock of {place().zone}.
            </p>
            <Pick
              label="Festival days kept as in"
              value={place().land}
              choices={[
                { id: 'israel', name: 'the land of Israel' },
                { id: 'diaspora', name: 'the diaspora' },
              ]}
              onPick={(land) =>
                props.survey.change({ ...kitchen(), place: { ...place(), land } }, 'Land changed')
              }
            />
          </>
        )}
      </Show>
    </div>
  );
}
