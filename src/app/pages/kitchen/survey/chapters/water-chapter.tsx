import { For, Show } from 'solid-js';
import type { Circuit, Vessel, VesselBody, VesselKind } from '../../../../../core/kitchen/index.ts';
import {
  addCircuit,
  addVessel,
  changeCircuit,
  changeVessel,
  removeCircuit,
  removeVessel,
} from '../../../../../core/editing/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { CircuitSelect } from '../fields/circuit-select.tsx';
import { isElectric, onBurner, onCircuit, thingsOf } from '../fields/circuits.ts';
import { Pick, Select, Toggle } from '../fields/pick.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed, TypedWords } from '../fields/typed.tsx';
import { BODY_WORDS, VESSEL_WORDS } from '../fields/words.ts';

const FILL_L = { least: 0.2, most: 200 } as const;
const POWER_W = { least: 0, most: 60_000 } as const;
const VOLTS_V = { least: 90, most: 440 } as const;
const RATING_A = { least: 1, most: 200 } as const;
const COUNT = { least: 1, most: 20 } as const;

/** What the water boils in, and which sockets share a breaker. */
export function WaterChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const kitchen = () => survey.kitchen();
  const add = (kind: VesselKind) =>
    survey.change(addVessel(kitchen(), kind).kitchen, `${VESSEL_WORDS[kind]} added`);
  return (
    <div class="chapter chapter--two">
      <section aria-label="Kettles">
        <h2>What boils the water?</h2>
        <p class="tell">Read volume and watts off the plate under each.</p>
        <ul class="thing-list">
          <For each={kitchen().vessels.map((v) => v.id)}>
            {(id) => (
              <Show when={kitchen().vessels.find((v) => v.id === id)}>
                {(vessel) => <VesselRow survey={survey} vessel={vessel()} />}
              </Show>
            )}
          </For>
        </ul>
        <p class="pick-label">Add</p>
        <div class="pick-row">
          <For each={Object.entries(VESSEL_WORDS) as [VesselKind, string][]}>
            {([kind, name]) => (
              <Action class="button button--plain" onPress={() => add(kind)}>
                {name}
              </Action>
            )}
          </For>
        </div>
      </section>
      <section aria-label="Circuits">
        <h2>Which of these go off together when you switch the breaker?</h2>
        <p class="tell">
          Two kettles on one breaker trip it. Switch each breaker off in turn and mark what goes
          dead.
        </p>
        <ul class="thing-list">
          <For each={kitchen().circuits.map((c) => c.id)}>
            {(id) => (
              <Show when={kitchen().circuits.find((c) => c.id === id)}>
                {(circuit) => <CircuitRow survey={survey} circuit={circuit()} />}
              </Show>
            )}
          </For>
        </ul>
        <Action
          class="button button--plain"
          onPress={() => survey.change(addCircuit(kitchen()).kitchen, 'Circuit added')}
        >
          Add a circuit
        </Action>
      </section>
    </div>
  );
}

function VesselRow(props: { survey: SurveyController; vessel: Vessel }) {
  const { survey } = props;
  const vessel = () => props.vessel;
  const path = (field: string) => `vessels.${vessel().id}.${field}`;
  const patch = (change: Partial<Vessel>) =>
    survey.change(changeVessel(survey.kitchen(), vessel().id, change), `${vessel().name} changed`);
  const electric = () => isElectric(vessel().kind);
  const burners = () =>
    survey
      .kitchen()
      .fixtures.flatMap((f) =>
        f.kind === 'cooktop' ? f.burners.map((b) => [b.id, `${f.name}, ${b.name}`] as const) : [],
      );
  return (
    <li class="thing" aria-label={vessel().name}>
      <TypedWords label="Name" value={vessel().name} onValue={(name) => patch({ name })} />
      <div class="typed-row">
        <Typed
          label="To its mark"
          quantity="volume"
          value={vessel().maxFillL}
          allowed={FILL_L}
          path={path('maxFillL')}
          onValue={(maxFillL) => patch({ maxFillL })}
        />
        <Show when={electric()}>
          <Typed
            label="Power"
            quantity="power"
            value={vessel().ratedW}
            allowed={POWER_W}
            path={path('ratedW')}
            onValue={(ratedW) => patch({ ratedW })}
          />
          <Typed
            label="Made for"
            quantity="voltage"
            value={vessel().ratedV}
            allowed={VOLTS_V}
            onValue={(ratedV) => patch({ ratedV })}
          />
        </Show>
        <Typed
          label="How many"
          quantity="count"
          value={vessel().count}
          allowed={COUNT}
          onValue={(count) => patch({ count })}
        />
      </div>
      <Pick
        label="Body"
        value={vessel().body}
        choices={(Object.entries(BODY_WORDS) as [VesselBody, string][]).map(([id, name]) => ({
          id,
          name,
        }))}
        onPick={(body) => patch({ body })}
      />
      <div class="field-row">
        <Show
          when={electric()}
          fallback={
            <Select
              label="Stands on"
              value={vessel().burner ?? ''}
              path={path('burner')}
              choices={[['', 'Not told'], ...burners()]}
              onPick={(burner) =>
                survey.change(onBurner(survey.kitchen(), vessel().id, burner), 'Burner told')
              }
            />
          }
        >
          <CircuitSelect
            kitchen={survey.kitchen()}
            value={vessel().circuit}
            path={path('circuit')}
            onPick={(id) =>
              survey.change(
                onCircuit(survey.kitchen(), { kind: 'vessel', id: vessel().id }, id),
                'Circuit told',
              )
            }
          />
        </Show>
        <Action
          class="word-button"
          label={`Take out ${vessel().name}`}
          onPress={() =>
            survey.change(removeVessel(survey.kitchen(), vessel().id), `${vessel().name} taken out`)
          }
        >
          Take out
        </Action>
      </div>
    </li>
  );
}

function CircuitRow(props: { survey: SurveyController; circuit: Circuit }) {
  const { survey } = props;
  const circuit = () => props.circuit;
  const patch = (change: Partial<Circuit>) =>
    survey.change(
      changeCircuit(survey.kitchen(), circuit().id, change),
      `${circuit().name} changed`,
    );
  return (
    <li class="thing" aria-label={circuit().name}>
      <TypedWords label="Breaker" value={circuit().name} onValue={(name) => patch({ name })} />
      <div class="typed-row">
        <Typed
          label="Rating"
          quantity="current"
          value={circuit().ratingA}
          allowed={RATING_A}
          path={`circuits.${circuit().id}.ratingA`}
          onValue={(ratingA) => patch({ ratingA })}
        />
        <Typed
          label="Voltage"
          quantity="voltage"
          value={circuit().voltsV}
          allowed={VOLTS_V}
          onValue={(voltsV) => patch({ voltsV })}
        />
      </div>
      <div class="pick-row" role="group" aria-label={`Go off with ${circuit().name}`}>
        <For each={thingsOf(survey.kitchen())}>
          {(thing) => (
            <Toggle
              pressed={thing.circuit === circuit().id}
              onPress={() =>
                survey.change(
                  onCircuit(
                    survey.kitchen(),
                    thing,
                    thing.circuit === circuit().id ? undefined : circuit().id,
                  ),
                  `${thing.name}: circuit told`,
                )
              }
            >
              {thing.name}
            </Toggle>
          )}
        </For>
      </div>
      <Action
        class="word-button"
        label={`Take out ${circuit().name}`}
        onPress={() =>
          survey.change(
            removeCircuit(survey.kitchen(), circuit().id),
            `${circuit().name} taken out`,
          )
        }
      >
        Take out
      </Action>
    </li>
  );
}
