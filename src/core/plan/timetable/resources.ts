import { unkeyed } from '../../messages/temporary.ts';
import {
  BURNERS_LIT,
  circuitResource,
  HANDS,
  rangeResource,
  vesselResource,
} from '../context/demands.ts';
import type { PlanContext } from '../context/step-draft.ts';
import type { Resource, Step } from '../model/types.ts';

/** What steps hold while they are begun: hands, lit burners, ranges, kettles, circuits. Only what some step asks for. */
export function resourcesOf(site: PlanContext, steps: readonly Step[]): readonly Resource[] {
  const { kitchen, kettles, room } = site;
  const all: Resource[] = [
    {
      id: HANDS,
      kind: 'hands' as const,
      name: unkeyed('Hands'),
      capacity: kitchen.household.people,
      unit: unkeyed('people'),
    },
    {
      id: BURNERS_LIT,
      kind: 'burners-lit' as const,
      name: unkeyed('Burners lit'),
      capacity: room.atOnce,
      unit: unkeyed('burners'),
    },
    ...kitchen.fixtures.flatMap((one) =>
      one.kind === 'cooktop'
        ? [
            {
              id: rangeResource(one.id),
              kind: 'range' as const,
              name: unkeyed(one.name),
              capacity: Math.max(1, one.burners.length),
              unit: unkeyed('burners'),
            },
          ]
        : [],
    ),
    ...kettles.map((kettle) => ({
      id: vesselResource(kettle),
      kind: 'vessel' as const,
      name: unkeyed(kettle.name),
      capacity: 1,
      unit: unkeyed('kettles'),
    })),
    ...kitchen.circuits.map(({ id, name, ratingA }) => ({
      id: circuitResource(id),
      kind: 'circuit' as const,
      name: unkeyed(name),
      capacity: ratingA,
      unit: unkeyed('A'),
    })),
  ];
  const asked = new Set(steps.flatMap(({ demands }) => Object.keys(demands)));
  return all.filter(({ id }) => asked.has(id));
}
