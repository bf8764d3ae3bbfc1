import { For, Show } from 'solid-js';
import type { Appliance, Bowl, Cupboard, Sink } from '../../../../../core/kitchen/index.ts';
import { Action } from '../../../../parts/action.tsx';
import { CircuitSelect } from './circuit-select.tsx';
import { Pick } from './pick.tsx';
import type { SurveyController } from '../survey-controller.ts';
import { Typed } from './typed.tsx';

type Patch = (patch: Readonly<Record<string, unknown>>, what: string) => void;

const BOWL_LENGTH_M = { least: 0.1, most: 3 } as const;
const BOWL_WIDTH_M = { least: 0.1, most: 1.5 } as const;
const BOWL_DEPTH_M = { least: 0.03, most: 1 } as const;
const RIM_M = { least: 0, most: 0.3 } as const;
const HANDLES = { least: 0, most: 6 } as const;

export function SinkFields(props: { sink: Sink; onPatch: Patch }) {
  const bowl = (index: number, change: Partial<Bowl>) =>
    props.onPatch(
      { bowls: props.sink.bowls.map((b, i) => (i === index ? { ...b, ...change } : b)) },
      'bowl',
    );
  const side = (
    index: number,
    field: keyof Bowl,
    word: string,
    allowed: { least: number; most: number },
  ) => (
    <Typed
      label={`${props.sink.bowls.length > 1 ? `Bowl ${index + 1}, ` : 'Bowl, '}${word}`}
      quantity="length"
      value={props.sink.bowls[index]?.[field]}
      allowed={allowed}
      path={`fixtures.${props.sink.id}.bowls.${index}.${field}`}
      onValue={(value) => bowl(index, { [field]: value })}
    />
  );
  return (
    <>
      <For each={props.sink.bowls.map((_, i) => i)}>
        {(i) => (
          <div class="typed-row">
            {side(i, 'lengthM', 'length', BOWL_LENGTH_M)}
            {side(i, 'widthM', 'width', BOWL_WIDTH_M)}
            {side(i, 'depthM', 'depth', BOWL_DEPTH_M)}
          </div>
        )}
      </For>
      <div class="typed-row">
        <Typed
          label="Rim"
          quantity="length"
          value={props.sink.rimWidthM}
          allowed={RIM_M}
          onValue={(rimWidthM) => props.onPatch({ rimWidthM }, 'rim')}
        />
        <Typed
          label="Handles of the tap"
          quantity="count"
          value={props.sink.tap.handles}
          allowed={HANDLES}
          onValue={(handles) => props.onPatch({ tap: { ...props.sink.tap, handles } }, 'tap')}
        />
      </div>
      <div class="pick-pair">
        <Pick
          label="Pull-out sprayer"
          value={props.sink.tap.sprayer ? 'yes' : 'no'}
          choices={YES_NO}
          onPick={(is) =>
            props.onPatch({ tap: { ...props.sink.tap, sprayer: is === 'yes' } }, 'sprayer')
          }
        />
        <Pick
          label="Drainboard"
          value={props.sink.drainboard ? 'yes' : 'no'}
          choices={YES_NO}
          onPick={(is) => props.onPatch({ drainboard: is === 'yes' }, 'drainboard')}
        />
      </div>
    </>
  );
}

const YES_NO = [
  { id: 'yes', name: 'Yes' },
  { id: 'no', name: 'No' },
] as const;

const SHELF_LENGTH_M = { least: 0.05, most: 6 } as const;
const SHELF_WIDTH_M = { least: 0.05, most: 3 } as const;
const MOST_SHELVES = 60;
/** A shelf of a base cupboard 60 cm wide; common practice, no published source. */
const USUAL_SHELF = { lengthM: 0.56, widthM: 0.5 } as const;

export function ShelfFields(props: { cupboard: Cupboard; onPatch: Patch }) {
  const shelves = () => props.cupboard.shelves;
  const put = (next: Cupboard['shelves']) => props.onPatch({ shelves: next }, 'shelves');
  const change = (index: number, part: Partial<Cupboard['shelves'][number]>) =>
    put(shelves().map((s, i) => (i === index ? { ...s, ...part } : s)));
  return (
    <section class="sheet-part" aria-label="Shelves">
      <p class="pick-label">
        {props.cupboard.kind === 'drawer' ? 'Floors to line' : 'Shelves to line'}
      </p>
      <For each={shelves().map((_, i) => i)}>
        {(i) => (
          <div class="typed-row">
            <Typed
              label={`Shelf ${i + 1}, length`}
              quantity="length"
              value={shelves()[i]?.lengthM}
              allowed={SHELF_LENGTH_M}
              onValue={(lengthM) => change(i, { lengthM })}
            />
            <Typed
              label={`Shelf ${i + 1}, depth`}
              quantity="length"
              value={shelves()[i]?.widthM}
              allowed={SHELF_WIDTH_M}
              onValue={(widthM) => change(i, { widthM })}
            />
            <Action
              class="word-button"
              label={`Take out shelf ${i + 1}`}
              onPress={() => put(shelves().filter((_, n) => n !== i))}
            >
              Take out
            </Action>
          </div>
        )}
      </For>
      <Show when={shelves().length < MOST_SHELVES}>
        <Action
          class="button button--plain"
          onPress={() => put([...shelves(), shelves().at(-1) ?? USUAL_SHELF])}
        >
          {shelves().length > 0 ? 'One more like the last' : 'Add a shelf'}
        </Action>
      </Show>
    </section>
  );
}

const POWER_W = { least: 0, most: 60_000 } as const;

export function ApplianceFields(props: {
  survey: SurveyController;
  appliance: Appliance;
  onPatch: Patch;
}) {
  return (
    <div class="field-row">
      <Typed
        label="Power"
        quantity="power"
        value={props.appliance.ratedW}
        empty="on its plate"
        allowed={POWER_W}
        path={`fixtures.${props.appliance.id}.ratedW`}
        onValue={(ratedW) => props.onPatch({ ratedW }, 'power')}
        onEmpty={() => props.onPatch({ ratedW: undefined }, 'power')}
      />
      <CircuitSelect
        kitchen={props.survey.kitchen()}
        value={props.appliance.circuit}
        onPick={(circuit) => props.onPatch({ circuit }, 'circuit')}
      />
    </div>
  );
}
