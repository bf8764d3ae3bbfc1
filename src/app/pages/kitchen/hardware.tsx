import { For } from 'solid-js';
import type { Kitchen, Room, Vessel } from '../../../core/kitchen/index.ts';

function hoodInWords(room: Room): string {
  if (room.hood.kind === 'none') return 'No hood';
  return room.hood.kind === 'vented'
    ? `Hood to the outside, ${room.hood.flowLS} L/s`
    : 'Recirculating hood (removes no gas)';
}

function vesselInWords(vessel: Vessel, kitchen: Kitchen): string {
  const circuit = kitchen.circuits.find((c) => c.id === vessel.circuit);
  const where = circuit ? `, on ${circuit.name}` : '';
  const count = vessel.count > 1 ? `${vessel.count} × ` : '';
  return `${count}${vessel.maxFillL} L, ${vessel.ratedW} W${where}`;
}

/** What the prediction stands on: altitude, kettles, circuits, hood and window. */
export function Hardware(props: { kitchen: Kitchen }) {
  const rows = () => [
    ['Altitude', `${props.kitchen.altitudeM} m`],
    ['Mains', `${props.kitchen.supplyV} V`],
    ['Tap water', `${props.kitchen.tapColdC} °C`],
    ...props.kitchen.vessels.map((v) => [v.name, vesselInWords(v, props.kitchen)]),
    ...props.kitchen.circuits.map((c) => [c.name, `${c.ratingA} A at ${c.voltsV} V`]),
    ['Hood', hoodInWords(props.kitchen.room)],
    [
      'Window',
      props.kitchen.room.window.areaM2 > 0
        ? `${props.kitchen.room.window.areaM2} m² opens`
        : 'none that opens',
    ],
  ];
  return (
    <dl class="hardware">
      <For each={rows()}>
        {([name, value]) => (
          <div>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        )}
      </For>
    </dl>
  );
}
