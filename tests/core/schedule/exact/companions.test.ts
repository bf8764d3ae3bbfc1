import { describe, expect, it } from 'vitest';
import type { Problem } from '../../../../src/core/schedule/index.ts';
import { companionsOf } from '../../../../src/core/schedule/exact/companions.ts';
import { modelOf, TICKS_PER_S } from '../../../../src/core/schedule/model/model.ts';
import { activity } from '../activity.ts';

type Kettles = {
  /** How long the water may wait for its pour. */
  readonly waitS: number;
  /** Hands that one glow of 200 s holds; there is one pair. */
  readonly glowHands: number;
};

/** Two kettles of 600 s on one burner, poured in 150 s each by one pair of hands, and a glow on the burner. */
function kettles({ waitS, glowHands }: Kettles): Problem {
  return {
    activities: [
      activity('boil0', 600, { demand: { burner: 1, kettle: 1 } }),
      activity('pour0', 150, {
        demand: { hands: 1, kettle: 1 },
        after: [{ id: 'boil0', maxLagS: waitS }],
      }),
      activity('boil1', 600, { demand: { burner: 1, kettle: 1 } }),
      activity('pour1', 150, {
        demand: { hands: 1, kettle: 1 },
        after: [{ id: 'boil1', maxLagS: waitS }],
      }),
      activity('glow', 200, { demand: { burner: 1, hands: glowHands } }),
    ],
    resources: ['burner', 'kettle', 'hands'].map((id) => ({ id, capacity: 1 })),
  };
}

/** In seconds, of the burner's users: two boils and the glow. */
function companions(told: Kettles, may: (activity: number) => boolean = () => true) {
  const { activities, leak, idle } = companionsOf(modelOf(kettles(told)), [0, 2, 4], may);
  return {
    activities,
    leakS: leak.map((ticks) => ticks / TICKS_PER_S),
    idleS: idle / TICKS_PER_S,
  };
}

describe('what keeps a burner idle', () => {
  it('is each pour, when nothing may be on the burner meanwhile', () => {
    expect(companions({ waitS: 80, glowHands: 1 })).toEqual({
      activities: [1, 3],
      leakS: [0, 0, 0],
      idleS: 300,
    });
  });

  it('is one pour less when a glow may go on beside one', () => {
    expect(companions({ waitS: 80, glowHands: 0 })).toMatchObject({
      leakS: [0, 0, 150],
      idleS: 150,
    });
  });

  it('is no pour whose water may wait while another kettle boils', () => {
    expect(companions({ waitS: 600, glowHands: 1 })).toMatchObject({ activities: [], idleS: 0 });
  });

  it('is nothing that keeps other hours', () => {
    expect(companions({ waitS: 80, glowHands: 1 }, (i) => i !== 3)).toMatchObject({
      activities: [1],
      idleS: 150,
    });
  });
});
