import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import type { Message } from '../../messages/index.ts';
import { message } from '../../messages/index.ts';
import { exactly } from '../../units/index.ts';
import { stage, stepDraft, type About, type StepDraft } from '../context/step-draft.ts';
import type { Work } from '../model/index.ts';

/**
 * What a hand asks before it touches, beside the clock: the hob's own lamp of
 * residual heat, or a drop of water, over a burner or in an oven.
 */
type HeatTest = 'lamp' | 'drop' | 'drop-in-oven';

/** A lamp that never came on proves nothing: the drop is told there too. */
function testDetail(test: HeatTest): readonly Message[] {
  return [
    message('steps.cool.slow-end'),
    message(`steps.cool.test.${test}`),
    ...(test === 'lamp' ? [message('steps.cool.lamp-dead')] : []),
    message(test === 'lamp' ? 'steps.cool.still-hot.lamp' : 'steps.cool.still-hot.drop'),
  ];
}

export type Cooling = {
  readonly id: string;
  /** The step that heated it. */
  readonly heated: string;
  readonly fixture: Fixture;
  readonly work: Work;
  /** In the title. */
  readonly name: Message;
  /** Beside the timer. */
  readonly timerName: Message;
  readonly lengthS: number;
  /** Something that may be hot stands between it and the hand. */
  readonly isBehind?: boolean;
  /** How it is tried at the end. */
  readonly test: HeatTest;
  readonly reason: Message;
  readonly makeSafe: Message;
  /** What is kept free while it is hot. */
  readonly demands: Readonly<Record<string, number>>;
};

/**
 * The wait until it is safe to touch, which begins by itself when the heat is
 * off and ends by a person's word on the test of its heat.
 */
export function coolStep(of: Cooling, about: About): StepDraft {
  const title = message('steps.cool.title', { name: of.name });
  return stepDraft(
    {
      id: of.id,
      kind: 'cool',
      phase: 'cool',
      work: of.work,
      title,
      reason: of.reason,
      stages: [
        stage('cool', title, {
          detail: [
            ...(of.isBehind ? [message('steps.cool.not-over')] : []),
            ...testDetail(of.test),
          ],
          say: message(`steps.cool.say.${of.test}`),
          hazards: ['hot-surface'],
          timers: [
            {
              id: 'cool',
              role: 'hold',
              purpose: 'at-least',
              lengthS: of.lengthS,
              label: message('steps.cool.wait', { name: of.timerName }),
              of: { label: message('steps.cool.wait-short'), name: of.timerName },
            },
          ],
        }),
      ],
      durationS: exactly(of.lengthS),
    },
    {
      fixture: of.fixture.id,
      sources: [citation('iso-13732-1-touch')],
      attention: 'none',
      startsBy: 'chain',
      needs: [{ step: of.heated }],
      makeSafe: of.makeSafe,
      demands: of.demands,
    },
    about,
  );
}
