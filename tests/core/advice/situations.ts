import { parseMoment } from '../../../src/core/calendar/index.ts';
import type { Planned } from '../../../src/core/advice/index.ts';
import { buildPlan } from '../../../src/core/plan/index.ts';
import { kitchenOf, type DEMOS } from '../plan/support/plans.ts';

export const NAMES = {
  kettle: 'Second kettle',
  'stove-kettle': 'Kettle on the stove',
  urn: 'Urn',
} as const;

/** A demo kitchen planned from a local time. */
export function plannedDemo(demo: (typeof DEMOS)[number], start: string): Planned {
  const kitchen = kitchenOf(demo);
  const options = { startWallMs: parseMoment('start', start, kitchen.place?.zone) };
  return { situation: { kitchen, options }, plan: buildPlan(kitchen, options) };
}
