import { For, Show } from 'solid-js';
import {
  isElectric,
  LIMITS,
  VESSEL_BODIES,
  VESSEL_KINDS,
  type Circuit,
  type Vessel,
  type VesselKind,
} from '../../../../../core/kitchen/index.ts';
import {
  addCircuit,
  addVessel,
  changeCircuit,
  changeVessel,
  consumersOf,
  onBurner,
  onCircuit,
  removeCircuit,
  removeVessel,
} from '../../../../../core/editing/index.ts';
import { message } from '../../../../../core/messages/index.ts';
import { t, translator, written } from '../../../../context/language.ts';
import { Action } from '../../../../parts/press/action.tsx';
import type { SurveyController } from '../controller/survey-controller.ts';
import { CircuitSelect } from '../inputs/circuit-select.tsx';
import { LastHot } from '../inputs/last-hot.tsx';
import { Pick, Select, Toggle } from '../inputs/pick.tsx';
import { Typed, TypedName } from '../inputs/typed.tsx';

/** What the water boils in, and which sockets share a breaker. */
export function WaterChapter(props: { survey: SurveyController }) {
  const { survey } = props;
  const kitchen = () => survey.kitchen();
  const add = (kind: VesselKind) =>
    survey.change(
      addVessel(kitchen(), kind, translator()).kitchen,
      message('survey.done.added', { what: message(`survey.vessel-kind.${kind}`) }),
    );
  return (
    <div class="chapter chapter--two">
      <section aria-label={t('survey.water.kettles')}>
        <h2>{t('survey.water.kettles.heading')}</h2>
        <p class="tell">{t('survey.water.kettles.note')}</p>
        <ul class="thing-list">
          <For each={kitchen().vessels.map((v) => v.id)}>
            {(id) => (
              <Show when={kitchen().vessels.find((v) => v.id === id)}>
                {(vessel) => <VesselRow survey={survey} vessel={vessel()} />}
              </Show>
            )}
          </For>
        </ul>
        <p class="pick-label">{t('survey.add')}</p>
        <div class="pick-row">
          <For each={VESSEL_KINDS}>
            {(kind) => (
              <Action class="button button--plain" onPress={() => add(kind)}>
                {t(`survey.vessel-kind.${kind}`)}
              </Action>
            )}
          </For>
        </div>
      </section>
      <section aria-label={t('survey.water.circuits')}>
        <h2>{t('survey.water.circuits.heading')}</h2>
        <p class="tell">{t('survey.water.circuits.note')}</p>
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
          onPress={() =>
            survey.change(
              addCircuit(kitchen(), translator()).kitchen,
              message('survey.done.circuit-added'),
            )
          }
        >
          {t('survey.water.circuits.add')}
        </Action>
      </section>
    </div>
  );
}

function VesselRow(props: { survey: SurveyController; vessel: Vessel }) {
  const { survey } = props;
  const vessel = () => props.vessel;
  const path = (field: string) => `vessels.${vessel().id}.${field}`;
  const patch = (change: Parameters<typeof changeVessel>[2]) =>
    survey.change(
      changeVessel(survey.kitchen(), vessel().id, change),
      message('survey.done.thing-changed', { name: vessel().name }),
    );
  const electric = () => isElectric(vessel());
  const burners = () =>
    survey
      .kitchen()
      .fixtures.flatMap((f) =>
        f.kind === 'cooktop'
          ? f.burners.map(
              (b) => [b.id, t('survey.water.burner', { cooktop: f.name, burner: b.name })] as const,
            )
          : [],
      );
  return (
    <li class="thing" aria-label={vessel().name}>
      <TypedName
        label={t('survey.water.name')}
        value={vessel().name}
        onValue={(name) => patch({ name })}
      />
      <div class="typed-row">
        <Typed
          label={t('survey.water.fill')}
          quantity="volume"
          value={vessel().maxFillL}
          allowed={LIMITS.maxFillL}
          path={path('maxFillL')}
          onValue={(maxFillL) => patch({ maxFillL })}
        />
        <Show when={electric()}>
          <Typed
            label={t('survey.water.power')}
            quantity="power"
            value={vessel().ratedW}
            allowed={LIMITS.powerW}
            path={path('ratedW')}
            onValue={(ratedW) => patch({ ratedW })}
          />
          <Typed
            label={t('survey.water.made-for')}
            quantity="voltage"
            value={vessel().ratedV}
            allowed={LIMITS.voltsV}
            onValue={(ratedV) => patch({ ratedV })}
          />
        </Show>
        <Typed
          label={t('survey.water.count')}
          quantity="count"
          value={vessel().count}
          allowed={LIMITS.vesselCount}
          onValue={(count) => patch({ count })}
        />
      </div>
      <Pick
        label={t('survey.water.body')}
        value={vessel().body}
        choices={VESSEL_BODIES.map((id) => ({ id, name: t(`survey.body.${id}`) }))}
        onPick={(body) => patch({ body })}
      />
      <LastHot
        label={t('survey.last-hot.own')}
        path={path('lastHotAt')}
        value={vessel().lastHotAt}
        onValue={(lastHotAt) => patch({ lastHotAt })}
      />
      <div class="field-row">
        <Show
          when={electric()}
          fallback={
            <Select
              label={t('survey.water.stands-on')}
              value={vessel().burner ?? ''}
              path={path('burner')}
              choices={[['', t('survey.not-told')], ...burners()]}
              onPick={(burner) =>
                survey.change(
                  onBurner(survey.kitchen(), vessel().id, burner === '' ? undefined : burner),
                  message('survey.done.burner-told'),
                )
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
                message('survey.done.circuit-told'),
              )
            }
          />
        </Show>
        <Action
          class="word-button"
          label={t('survey.take-out-named', { name: vessel().name })}
          onPress={() =>
            survey.change(
              removeVessel(survey.kitchen(), vessel().id),
              message('survey.done.taken-out', { name: vessel().name }),
            )
          }
        >
          {t('survey.take-out')}
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
      message('survey.done.thing-changed', { name: circuit().name }),
    );
  return (
    <li class="thing" aria-label={circuit().name}>
      <TypedName
        label={t('survey.water.breaker')}
        value={circuit().name}
        onValue={(name) => patch({ name })}
      />
      <div class="typed-row">
        <Typed
          label={t('survey.water.rating')}
          quantity="current"
          value={circuit().ratingA}
          allowed={LIMITS.circuitA}
          path={`circuits.${circuit().id}.ratingA`}
          onValue={(ratingA) => patch({ ratingA })}
        />
        <Typed
          label={t('survey.water.voltage')}
          quantity="voltage"
          value={circuit().voltsV}
          allowed={LIMITS.voltsV}
          onValue={(voltsV) => patch({ voltsV })}
        />
      </div>
      <div
        class="pick-row"
        role="group"
        aria-label={t('survey.water.go-off', { name: circuit().name })}
      >
        <For each={consumersOf(survey.kitchen())}>
          {(consumer) => (
            <Toggle
              pressed={consumer.circuit === circuit().id}
              onPress={() =>
                survey.change(
                  onCircuit(
                    survey.kitchen(),
                    consumer,
                    consumer.circuit === circuit().id ? undefined : circuit().id,
                  ),
                  message('survey.done.told', {
                    fixture: consumer.name,
                    what: message('survey.what.circuit-told'),
                  }),
                )
              }
            >
              {written(consumer.name)}
            </Toggle>
          )}
        </For>
      </div>
      <Action
        class="word-button"
        label={t('survey.take-out-named', { name: circuit().name })}
        onPress={() =>
          survey.change(
            removeCircuit(survey.kitchen(), circuit().id),
            message('survey.done.taken-out', { name: circuit().name }),
          )
        }
      >
        {t('survey.take-out')}
      </Action>
    </li>
  );
}
