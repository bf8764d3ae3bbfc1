import { asWritten } from '../../../../src/core/messages/index.ts';
import type { Plan } from '../../../../src/core/plan/index.ts';
import { NEW_YEAR_MS } from './tablet.ts';

/** The plan with one rest day, from and to so many seconds after the tablet's beginning. */
export function withSabbath(plan: Plan, fromS: number, toS: number): Plan {
  return {
    ...plan,
    days: {
      startWallMs: NEW_YEAR_MS,
      restDays: [
        {
          name: asWritten('the Sabbath'),
          fromWallMs: NEW_YEAR_MS + fromS * 1000,
          toWallMs: NEW_YEAR_MS + toS * 1000,
        },
      ],
    },
  };
}
