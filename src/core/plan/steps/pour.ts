import { unkeyed } from '../../messages/temporary.ts';
import { citation } from '../../custom/index.ts';
import type { Fixture, LaneDirection } from '../../kitchen/index.ts';
import { addBands, mapBand, type Band } from '../../units/index.ts';
import { kettleDemand, vesselResource } from '../context/demands.ts';
import { stepDraft, stage, type StepDraft, type PlanContext } from '../context/step-draft.ts';
import type { KettlePour } from '../pours/kettle-pour.ts';
import { kettlePours } from '../pours/pouring.ts';
import type { Kettle, PourEstimate } from '../estimates/index.ts';
import type { Need, Stage } from '../model/types.ts';
import { handworkS } from '../context/work-times.ts';
import { restId } from './clean.ts';
import {
  aboutKettle,
  boilOverId,
  boilStage,
  burnerNeed,
  fillTitle,
  kettleSafe,
  lower,
  pictureOf,
  plugLines,
} from './kettles.ts';

/** Cold water is asked for again after this, s: custom says at once. */
const COLD_REMIND_S = 60;

export function boilId(fixture: string, kettle: number): string {
  return `boil-${fixture}-${kettle}`;
}

export function pourId(fixture: string, kettle: number): string {
  return `pour-${fixture}-${kettle}`;
}

/** Which kettle pours next: the one that is ready first, by boiling times alone. */
export class KettleTurn {
  readonly #freeS = new Map<string, number>();
  readonly #site: PlanContext;

  constructor(site: PlanContext) {
    this.#site = site;
  }

  next(): Kettle {
    const readyS = (kettle: Kettle): number =>
      (this.#freeS.get(kettle.id) ?? 0) + (this.#site.boils.get(kettle.id)?.timeS.typical ?? 0);
    const kettle = this.#site.kettles.toSorted((a, b) => readyS(a) - readyS(b))[0];
    if (!kettle) throw new RangeError('kettles is empty; allowed: one or more. Add a kettle.');
    this.#freeS.set(kettle.id, readyS(kettle));
    return kettle;
  }
}

type Turn = {
  readonly site: PlanContext;
  readonly fixture: Fixture;
  readonly pour: KettlePour;
  readonly of: number;
  readonly kettle: Kettle;
  readonly pourS: Band;
  /** The pour of this fixture for which the same kettle was used before. */
  readonly lastWithKettle?: string;
};

function boilDraft(turn: Turn): StepDraft {
  const { site, fixture, pour, kettle, of } = turn;
  const boil = site.boils.get(kettle.id);
  const needs: Need[] = [
    { step: restId(fixture.id) },
    ...(kettle.toBuy || kettle.purged ? [] : [{ step: boilOverId(kettle) }]),
    ...burnerNeed(site, kettle),
    ...(turn.lastWithKettle === undefined ? [] : [{ step: turn.lastWithKettle }]),
  ];
  return stepDraft(
    {
      id: boilId(fixture.id, pour.kettle),
      kind: 'boil',
      phase: 'purge',
      title: unkeyed(
        `Boil kettle ${pour.kettle} of ${of} for ${fixture.name}: ${lower(kettle.name)}.`,
      ),
      reason: unkeyed(
        'It is poured from the vessel that was on the fire (kli rishon), at a rolling boil.',
      ),
      stages: [
        stage('fill', fillTitle(site, kettle), {
          detail: [unkeyed('Never past the mark.'), ...plugLines(site, kettle).map(unkeyed)],
          say: unkeyed('It is on'),
        }),
        {
          ...boilStage(
            site,
            kettle,
            `Wait for a rolling boil, ${site.boilingC.toFixed(1)} °C here.`,
          ),
          detail: kettle.burner
            ? [unkeyed(`Turn the ${kettle.burner.name} burner off as you lift it.`)]
            : [],
        },
      ],
      durationS: addBands(boil?.timeS ?? { low: 0, typical: 0, high: 0 }, handworkS('light')),
    },
    {
      fixture: fixture.id,
      sources: [citation('oc-451-6')],
      needs,
      demands: kettleDemand(site, kettle),
      makeSafe: unkeyed(kettleSafe(kettle)),
      picture: pictureOf(site, kettle),
    },
    { ...aboutKettle(site, kettle), fixture },
  );
}

const COUNTER_WAY: Readonly<Record<LaneDirection, string>> = {
  'back-to-front':
    'From the back edge to the front, lane by lane; let the water run down the front.',
  shortest:
    'Lane by lane as drawn: the shortest way, by your choice; let the water run down the front.',
};

function wayLines(site: PlanContext, fixture: Fixture, pour: KettlePour): readonly string[] {
  if (pour.parts.length > 0) return pour.parts;
  return fixture.kind === 'counter'
    ? [COUNTER_WAY[site.kitchen.household.laneDirection ?? 'back-to-front']]
    : ['From the far edge to the near one, lane by lane.'];
}

function pourStages(turn: Turn): readonly Stage[] {
  const { site, fixture, pour, of } = turn;
  return [
    stage(
      'pour',
      `Pour kettle ${pour.kettle} of ${of} over ${fixture.name}: every spot reached by the stream.`,
      {
        detail: [
          ...wayLines(site, fixture, pour),
          ...(site.choices.get(fixture.id)?.notes ?? []),
        ].map(unkeyed),
        say: unkeyed('Poured'),
        hazards: ['boiling-water'],
        resumption: 'ask',
        reviewAsk: unkeyed('Was this kettle poured to the end?'),
        timers: [
          {
            id: 'empty',
            role: 'estimate',
            purpose: 'at-least',
            lengthS: turn.pourS.typical,
            label: unkeyed('Empty about now'),
          },
        ],
      },
    ),
    stage('cold', 'Pour cold water over the same place at once.', {
      detail: [unkeyed('Only where the boiling water went.')],
      say: unkeyed('Cold water poured'),
      resumption: 'ask',
      reviewAsk: unkeyed('Was cold water poured over it?'),
      timers: [
        {
          id: 'cold',
          role: 'reminder',
          purpose: 'at-most',
          lengthS: COLD_REMIND_S,
          label: unkeyed('Cold water now'),
          repeats: true,
        },
      ],
    }),
  ];
}

function pourDraft(turn: Turn): StepDraft {
  const { site, fixture, pour, kettle, of } = turn;
  const choice = site.choices.get(fixture.id);
  const waitS = site.boils.get(kettle.id)?.waitS ?? 0;
  const before = pour.kettle > 1 ? [{ step: pourId(fixture.id, pour.kettle - 1) }] : [];
  return stepDraft(
    {
      id: pourId(fixture.id, pour.kettle),
      kind: 'pour',
      phase: 'purge',
      title: unkeyed(`Pour kettle ${pour.kettle} of ${of} over ${fixture.name}.`),
      reason: unkeyed(choice?.method.reason ?? ''),
      stages: pourStages(turn),
      durationS: addBands(addBands(handworkS('carry'), turn.pourS), handworkS('cold')),
    },
    {
      fixture: fixture.id,
      sources: [...(choice ? [choice.method.source] : []), citation(site.custom.coldSource)],
      needs: [{ step: boilId(fixture.id, pour.kettle), withinS: Math.floor(waitS) }, ...before],
      demands: { hands: 1, [vesselResource(kettle)]: 1 },
      makeSafe: unkeyed('Put the kettle down where nobody can knock it.'),
      ...(pour.picture && { picture: pour.picture }),
    },
    { ...aboutKettle(site, kettle), fixture },
  );
}

export type FixturePours = {
  readonly drafts: readonly StepDraft[];
  readonly kettles: number;
};

/** Boil and pour of every kettle of one fixture. */
export function pourSteps(
  site: PlanContext,
  fixture: Fixture,
  need: PourEstimate,
  turns: KettleTurn,
): FixturePours {
  const pours = kettlePours(fixture, need, site.filledL, site.kitchen.household.laneDirection);
  const last = new Map<string, string>();
  const total = pours.reduce((sum, { litres: l }) => sum + l, 0);
  const drafts = pours.flatMap((pour) => {
    const kettle = turns.next();
    const before = last.get(kettle.id);
    last.set(kettle.id, pourId(fixture.id, pour.kettle));
    const share = total > 0 ? pour.litres / total : 1 / pours.length;
    const turn: Turn = {
      site,
      fixture,
      pour,
      of: pours.length,
      kettle,
      pourS: mapBand(need.pourS, (s) => s * share),
      ...(before !== undefined && { lastWithKettle: before }),
    };
    return [boilDraft(turn), pourDraft(turn)];
  });
  return { drafts, kettles: pours.length };
}
