import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import type { Fixture } from '../../kitchen/index.ts';
import { exactly } from '../../units/index.ts';
import { circuitDemand } from '../context/demands.ts';
import {
  stepDraft,
  offReminder,
  stage,
  type StepDraft,
  type PlanContext,
} from '../context/step-draft.ts';
import { handworkS } from '../context/work-times.ts';
import { fuelOf, restId } from './clean.ts';

const S_MIN = 60;
/** The longer of the usual 10 to 20 minutes, where nothing says how long. */
const LONGEST_STEAM_MIN = 20;
const LONGEST_HEAT_MIN = 30;

export function byHandId(fixture: string): string {
  return `purge-${fixture}`;
}

function powerOf(site: PlanContext, fixture: Fixture): Readonly<Record<string, number>> {
  if (!('ratedW' in fixture) || fixture.ratedW === undefined) return {};
  return circuitDemand(site.kitchen, fixture.circuit, fixture.ratedW);
}

/** Water boiled inside until everything is full of steam. */
export function steamStep(site: PlanContext, fixture: Fixture): StepDraft {
  const choice = site.choices.get(fixture.id);
  const minutes = choice?.method.minutes ?? LONGEST_STEAM_MIN;
  return stepDraft(
    {
      id: byHandId(fixture.id),
      kind: 'steam',
      phase: 'purge',
      title: unkeyed(`Boil water inside for ${minutes} min: ${fixture.name}.`),
      reason: unkeyed(choice?.method.reason ?? ''),
      stages: [
        stage(
          'start',
          'Put a wide cup of water in, with a wooden stick standing in it, and switch it on.',
          {
            detail: [
              unkeyed(
                'The stick lets it boil quietly: still water can leap out of the cup when it is moved.',
              ),
            ],
            say: unkeyed('It is on'),
            hazards: ['boiling-water'],
            resumption: 'ask',
            reviewAsk: unkeyed('Is it on now?'),
          },
        ),
        stage('steam', 'Let it fill with steam.', {
          detail: [
            unkeyed(
              'Top the water up before the cup is dry, and move the cup once to another place.',
            ),
          ],
          hazards: ['boiling-water'],
          resumption: 'restart',
          reviewAsk: unkeyed('Did it go on boiling?'),
          timers: [
            {
              id: 'hold',
              role: 'hold',
              purpose: 'unbroken',
              lengthS: minutes * S_MIN,
              label: unkeyed('Steam'),
            },
          ],
        }),
        stage('open', 'Switch it off, open it away from you, and wipe it with cold water.', {
          detail: [unkeyed('Leave the cup for five minutes before you lift it.')],
          say: unkeyed('Wiped'),
          hazards: ['boiling-water'],
          resumption: 'ask',
          reviewAsk: unkeyed('Is it off and wiped?'),
          timers: [offReminder('Switch it off')],
        }),
      ],
      durationS: {
        low: handworkS('open').low + minutes * S_MIN,
        typical: handworkS('open').typical + minutes * S_MIN,
        high: handworkS('open').high + minutes * S_MIN,
      },
    },
    {
      fixture: fixture.id,
      sources: choice ? [choice.method.source] : [],
      needs: [{ step: restId(fixture.id) }],
      demands: powerOf(site, fixture),
      makeSafe: unkeyed('Switch it off and leave it shut.'),
    },
    { fixture, fuel: fuelOf(fixture) ?? 'electric' },
  );
}

const POURED = {
  detail: [
    unkeyed('Straight from the kettle that boiled, at a rolling boil.'),
    unkeyed('Every spot reached by the stream itself, a kettle at a time.'),
  ],
  say: unkeyed('Every spot was poured'),
  reviewAsk: unkeyed('Was every spot reached by boiling water?'),
} as const;

const IMMERSED = {
  detail: [
    unkeyed('The water boils before and while each part is in it.'),
    unkeyed('Every part wholly under.'),
  ],
  say: unkeyed('All parts were in'),
  reviewAsk: unkeyed('Were all parts in the boiling water?'),
} as const;

function titleOf({ name }: Fixture, poured: boolean, wet: boolean, minutes: number): string {
  if (poured) return `Pour boiling water over every spot, by hand: ${name}.`;
  return wet
    ? `Immerse in boiling water, part by part: ${name}.`
    : `Heat as your answer says, ${minutes} min: ${name}.`;
}

/** Look at what is heated at least this often, s: common practice, no published source. */
const LOOK_S = 10 * S_MIN;

/** What a household's answer asks for that no other builder knows: heat or immersion by hand. */
export function byHandStep(site: PlanContext, fixture: Fixture): StepDraft {
  const choice = site.choices.get(fixture.id);
  const method = choice?.method.method;
  const poured = method === 'pour';
  const wet = poured || method === 'immerse' || method === 'boil-over';
  const minutes = choice?.method.minutes ?? LONGEST_HEAT_MIN;
  const title = titleOf(fixture, poured, wet, minutes);
  return stepDraft(
    {
      id: byHandId(fixture.id),
      kind: wet ? 'boil-over' : 'high-heat',
      phase: 'purge',
      title: unkeyed(title),
      reason: unkeyed(choice?.method.reason ?? ''),
      stages: wet
        ? [
            stage('immerse', title, {
              ...(poured ? POURED : IMMERSED),
              hazards: ['boiling-water'],
              resumption: 'ask',
            }),
            stage('cold', 'Rinse every part with cold water at once.', {
              say: unkeyed('Rinsed cold'),
            }),
          ]
        : [
            stage('hold', title, {
              hazards: ['hot-surface'],
              say: unkeyed('The time is over'),
              resumption: 'restart',
              reviewAsk: unkeyed('Did the heat go on without a break?'),
              timers: [
                {
                  id: 'hold',
                  role: 'hold',
                  purpose: 'unbroken',
                  lengthS: minutes * S_MIN,
                  label: unkeyed('Heat'),
                },
                {
                  id: 'look',
                  role: 'reminder',
                  purpose: 'at-most',
                  lengthS: LOOK_S,
                  label: unkeyed('Look at what is heated'),
                  repeats: true,
                },
              ],
            }),
            stage('off', 'Turn the heat off and leave it untouched until it is cool.', {
              hazards: ['hot-surface'],
              say: unkeyed('It is off and cool'),
              resumption: 'ask',
              reviewAsk: unkeyed('Is the heat off?'),
              timers: [offReminder('Turn the heat off')],
            }),
          ],
      durationS: wet
        ? handworkS('by-hand')
        : exactly(minutes * S_MIN + handworkS('by-hand').typical),
    },
    {
      fixture: fixture.id,
      sources: choice ? [choice.method.source, citation(site.custom.coldSource)] : [],
      needs: [{ step: restId(fixture.id) }],
      demands: powerOf(site, fixture),
      makeSafe: unkeyed('Turn the heat off and keep everybody away from it.'),
    },
    { fixture, fuel: fuelOf(fixture) ?? 'electric' },
  );
}
