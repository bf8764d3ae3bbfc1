import { For } from 'solid-js';
import type { Kitchen, Room, Vessel } from '../../../core/kitchen/index.ts';
import { message, type Message } from '../../../core/messages/index.ts';
import { say, t, written } from '../../context/language.ts';

function hoodMessage({ hood }: Room): Message {
  switch (hood.kind) {
    case 'none':
      return message('kitchen.hardware.hood.none');
    case 'unknown':
      return message('kitchen.hardware.hood.unknown');
    case 'vented':
      return message('kitchen.hardware.hood.vented', { flowLS: hood.flowLS });
    case 'recirculating':
      return message('kitchen.hardware.hood.recirculating');
  }
}

function windowMessage({ window }: Room): Message {
  if (window === undefined) return message('kitchen.hardware.window.not-told');
  return window.areaM2 > 0
    ? message('kitchen.hardware.window.opens', { areaM2: window.areaM2 })
    : message('kitchen.hardware.window.none');
}

function vesselMessage(told: Vessel, kitchen: Kitchen): Message {
  const { count, maxFillL, ratedW } = told;
  const vessel = message('kitchen.hardware.vessel', { count, maxFillL, ratedW });
  const circuit = kitchen.circuits.find(({ id }) => id === told.circuit);
  return circuit
    ? message('kitchen.hardware.vessel.on', { vessel, circuit: circuit.name })
    : vessel;
}

/** What the prediction stands on: altitude, kettles, circuits, hood and window. */
export function Hardware(props: { kitchen: Kitchen }) {
  const rows = (): readonly (readonly [string, Message])[] => {
    const { altitudeM, supplyV, tapColdC, room, vessels, circuits } = props.kitchen;
    return [
      [t('kitchen.hardware.altitude'), message('kitchen.hardware.altitude.value', { altitudeM })],
      [t('kitchen.hardware.mains'), message('kitchen.hardware.mains.value', { supplyV })],
      [t('kitchen.hardware.tap'), message('kitchen.hardware.tap.value', { tapColdC })],
      ...vessels.map((vessel) => [vessel.name, vesselMessage(vessel, props.kitchen)] as const),
      ...circuits.map(
        ({ name, ratingA, voltsV }) =>
          [name, message('kitchen.hardware.circuit', { ratingA, voltsV })] as const,
      ),
      [t('kitchen.hardware.hood'), hoodMessage(room)],
      [t('kitchen.hardware.window'), windowMessage(room)],
    ];
  };
  return (
    <dl class="hardware">
      <For each={rows()}>
        {([name, value]) => (
          <div>
            <dt>{written(name)}</dt>
            <dd>{say(value)}</dd>
          </div>
        )}
      </For>
    </dl>
  );
}
