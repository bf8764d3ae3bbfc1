import { For, Show } from 'solid-js';
import {
  BURNER_TYPES,
  OVEN_CLEANINGS,
  type Burner,
  type BurnerType,
  type Cooktop,
  type Kitchen,
  type Oven,
} from '../../../../../core/kitchen/index.ts';
import { addBurner, changeBurner, removeBurner } from '../../../../../core/editing/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { CircuitSelect } from './circuit-select.tsx';
import { BURNS_GAS, onCircuit } from './circuits.ts';
import { Pick, Select } from './pick.tsx';
import { OfferPicture } from './pictures.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed, TypedWords } from './typed.tsx';
import { BURNER_WORDS, CLEANING_WORDS, SURFACE_WORDS } from './words.ts';

type Patch = (patch: Readonly<Record<string, unknown>>, what: string) => void;

const BURNER_W = { least: 200, most: 60_000 } as const;
const BURNER_M = { least: 0.04, most: 0.6 } as const;
const MOST_BURNERS = 16;

/** The kind of burner most of them have, for one answer about all. */
function commonType(cooktop: Cooktop): BurnerType | undefined {
  const [first] = cooktop.burners;
  return cooktop.burners.every((b) => b.type === first?.type) ? first?.type : undefined;
}

export function CooktopFields(props: {
  survey: SurveyController;
  cooktop: Cooktop;
  onPatch: Patch;
}) {
  const { survey } = props;
  const all = (type: BurnerType) => {
    const next = props.cooktop.burners.reduce(
      (k: Kitchen, b) => changeBurner(k, props.cooktop.id, b.id, { type }),
      survey.kitchen(),
    );
    survey.change(next, `${props.cooktop.name}: ${BURNER_WORDS[type].name.toLowerCase()}`);
  };
  return (
    <>
      <Select
        label="Kind of burners"
        value={commonType(props.cooktop) ?? ''}
        choices={[
          ...(commonType(props.cooktop) ? [] : [['', 'Of several kinds'] as const]),
          ...BURNER_TYPES.map((id) => [id, BURNER_WORDS[id].name] as const),
        ]}
        onPick={(type) => {
          if (type !== '') all(type);
        }}
      />
      <Show when={commonType(props.cooktop)}>
        {(type) => <p class="tell">{BURNER_WORDS[type()].tell}</p>}
      </Show>
      <Pick
        label="What lies between the burners?"
        value={props.cooktop.surface}
        choices={(['metal', 'enamel', 'glass-ceramic'] as const).map((id) => ({
          id,
          name: SURFACE_WORDS[id],
        }))}
        onPick={(surface) => props.onPatch({ surface }, SURFACE_WORDS[surface].toLowerCase())}
      />
      <Show when={!props.cooktop.burners.every((b) => BURNS_GAS.includes(b.type))}>
        <CircuitSelect
          kitchen={survey.kitchen()}
          value={props.cooktop.burners[0]?.circuit}
          path={`fixtures.${props.cooktop.id}.burners`}
          onPick={(circuit) =>
            survey.change(
              onCircuit(survey.kitchen(), { kind: 'fixture', id: props.cooktop.id }, circuit),
              `${props.cooktop.name}: circuit told`,
            )
          }
        />
      </Show>
      <p class="pick-label">Each burner</p>
      <ul class="burner-list">
        <For each={props.cooktop.burners.map((b) => b.id)}>
          {(id) => (
            <Show when={props.cooktop.burners.find((b) => b.id === id)}>
              {(burner) => <BurnerRow survey={survey} cooktop={props.cooktop} burner={burner()} />}
            </Show>
          )}
        </For>
      </ul>
      <Show when={props.cooktop.burners.length < MOST_BURNERS}>
        <Action
          class="button button--plain"
          onPress={() =>
            survey.change(
              addBurner(survey.kitchen(), props.cooktop.id).kitchen,
              `${props.cooktop.name}: burner added`,
            )
          }
        >
          Add a burner
        </Action>
      </Show>
    </>
  );
}

function BurnerRow(props: { survey: SurveyController; cooktop: Cooktop; burner: Burner }) {
  const { survey } = props;
  const path = () => `fixtures.${props.cooktop.id}.burners.${props.burner.id}`;
  const patch = (change: Partial<Burner>) =>
    survey.change(
      changeBurner(survey.kitchen(), props.cooktop.id, props.burner.id, change),
      `${props.cooktop.name}, ${props.burner.name}: changed`,
    );
  return (
    <li class="burner-row">
      <TypedWords label="Called" value={props.burner.name} onValue={(name) => patch({ name })} />
      <Typed
        label={`Power, ${props.burner.name}`}
        quantity="power"
        value={props.burner.ratedW}
        allowed={BURNER_W}
        path={`${path()}.ratedW`}
        onValue={(ratedW) => patch({ ratedW })}
      />
      <Typed
        label={`Across, ${props.burner.name}`}
        quantity="length"
        value={props.burner.diameterM}
        allowed={BURNER_M}
        path={`${path()}.diameterM`}
        onValue={(diameterM) => patch({ diameterM })}
      />
      <Select
        label="Kind"
        value={props.burner.type}
        choices={BURNER_TYPES.map((id) => [id, BURNER_WORDS[id].name] as const)}
        onPick={(type) => patch({ type })}
      />
      <Show when={props.cooktop.burners.length > 1}>
        <Action
          class="word-button"
          label={`Take out the burner ${props.burner.name}`}
          onPress={() =>
            survey.change(
              removeBurner(survey.kitchen(), props.cooktop.id, props.burner.id),
              `${props.cooktop.name}: burner taken out`,
            )
          }
        >
          Take out
        </Action>
      </Show>
    </li>
  );
}

const OVEN_W = { least: 200, most: 60_000 } as const;
const CYCLE_MIN = { least: 30, most: 600 } as const;

export function OvenFields(props: { survey: SurveyController; oven: Oven; onPatch: Patch }) {
  const path = (field: string) => `fixtures.${props.oven.id}.${field}`;
  const cooktops = () => props.survey.kitchen().fixtures.filter((f) => f.kind === 'cooktop');
  return (
    <>
      <Pick
        label="How does it clean itself?"
        wide
        path={path('cleaning')}
        value={props.oven.cleaning}
        choices={OVEN_CLEANINGS.map((id) => ({
          id,
          ...CLEANING_WORDS[id],
          picture: () => <OfferPicture kind="oven" offer={id} />,
        }))}
        onPick={(cleaning) =>
          props.onPatch(
            cleaning === 'none' ? { cleaning, cycleMin: undefined } : { cleaning },
            CLEANING_WORDS[cleaning].name.toLowerCase(),
          )
        }
      />
      <Show when={props.oven.cleaning === 'steam' || props.oven.cleaning === 'catalytic'}>
        <p class="trap" role="status">
          {props.oven.cleaning === 'steam'
            ? 'Steam clean is not a purge. The plan treats this oven as one that does not clean itself.'
            : 'A catalytic lining is not a purge. The plan treats this oven as one that does not clean itself.'}
        </p>
      </Show>
      <div class="typed-row">
        <Show when={props.oven.cleaning === 'pyrolytic'}>
          <Typed
            label="Length of the cycle"
            quantity="minutes"
            value={props.oven.cycleMin}
            empty="by the manual"
            allowed={CYCLE_MIN}
            path={path('cycleMin')}
            onValue={(cycleMin) => props.onPatch({ cycleMin }, 'cycle')}
            onEmpty={() => props.onPatch({ cycleMin: undefined }, 'cycle')}
          />
        </Show>
        <Typed
          label="Power"
          quantity="power"
          value={props.oven.ratedW}
          allowed={OVEN_W}
          path={path('ratedW')}
          onValue={(ratedW) => props.onPatch({ ratedW }, 'power')}
        />
      </div>
      <Show when={props.oven.cleaning === 'pyrolytic'}>
        <Pick
          label="What does the manual say of the racks?"
          value={props.oven.racksStayInCycle ? 'in' : 'out'}
          choices={[
            { id: 'out', name: 'They come out' },
            { id: 'in', name: 'They may stay in' },
          ]}
          onPick={(where) => props.onPatch({ racksStayInCycle: where === 'in' }, 'racks')}
        />
      </Show>
      <Pick
        label="Heated by"
        value={props.oven.heat}
        choices={[
          { id: 'electric', name: 'Electricity' },
          { id: 'gas', name: 'Gas' },
        ]}
        onPick={(heat) => props.onPatch({ heat }, heat)}
      />
      <div class="field-row">
        <Select
          label="In one appliance with"
          value={props.oven.sharesRangeWith ?? ''}
          choices={[['', 'No cooktop'], ...cooktops().map((one) => [one.id, one.name] as const)]}
          onPick={(id) => props.onPatch({ sharesRangeWith: id === '' ? undefined : id }, 'range')}
        />
        <CircuitSelect
          kitchen={props.survey.kitchen()}
          value={props.oven.circuit}
          path={path('circuit')}
          onPick={(circuit) => props.onPatch({ circuit }, 'circuit')}
        />
      </div>
    </>
  );
}
