import { asWritten, message } from '../../messages/index.ts';
import {
  BURNERS_LIT,
  circuitResource,
  HANDS,
  rangeResource,
  vesselResource,
} from '../context/demands.ts';
import { placeResource, WATCH, WHOLE } from '../context/places.ts';
import { boilingVessels, type PlanContext } from '../context/plan-context.ts';
import type { Resource, Step } from '../model/index.ts';

/** What steps hold while they are begun: hands, lit burners, ranges, kettles, circuits. Only what some step asks for. */
export function resourcesOf(context: PlanContext, steps: readonly Step[]): readonly Resource[] {
  const { kitchen, room } = context;
  const all: Resource[] = [
    {
      id: HANDS,
      kind: 'hands' as const,
      name: message('common.resource.hands'),
      capacity: kitchen.household.people,
      unit: message('common.resource.unit.people'),
    },
    {
      id: BURNERS_LIT,
      kind: 'burners-lit' as const,
      name: message('common.resource.burners-lit'),
      capacity: room.atOnce,
      unit: message('common.resource.unit.burners'),
    },
    ...kitchen.fixtures.flatMap((one) =>
      one.kind === 'cooktop'
        ? [
            {
              id: rangeResource(one.id),
              kind: 'range' as const,
              name: asWritten(one.name),
              capacity: Math.max(1, one.burners.length),
              unit: message('common.resource.unit.burners'),
            },
          ]
        : [],
    ),
    ...kitchen.fixtures.map((one) => ({
      id: placeResource(one.id),
      kind: 'place' as const,
      name: asWritten(one.name),
      capacity: WHOLE,
      unit: message('common.resource.unit.shares'),
    })),
    {
      id: WATCH,
      kind: 'watch' as const,
      name: message('common.resource.watch'),
      capacity: WHOLE * kitchen.household.people,
      unit: message('common.resource.unit.shares'),
    },
    ...boilingVessels(context).map((kettle) => ({
      id: vesselResource(kettle),
      kind: 'vessel' as const,
      name: kettle.name,
      capacity: 1,
      unit: message('common.resource.unit.kettles'),
    })),
    ...kitchen.circuits.map(({ id, name, ratingA }) => ({
      id: circuitResource(id),
      kind: 'circuit' as const,
      name: asWritten(name),
      capacity: ratingA,
      unit: message('common.resource.unit.amperes'),
    })),
  ];
  const asked = new Set(steps.flatMap(({ demands }) => Object.keys(demands)));
  return all.filter(({ id }) => asked.has(id));
}
